using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Mistakes in operations and what undoes them.</summary>
public sealed class OperationMistakesTests
{
    [Fact]
    public void Read_MisspeltAspectInChange_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {plaec: fitted -> off}, place: bay, time: 1 min, undo: fit_starter}
            """));
        Assert.Equal(
            """
            b.yaml:6:46: error PR0201: 'starter' has no aspect 'plaec'; did you mean 'place'?
            6 |   knock: {on: starter, text: Knock, change: {plaec: fitted -> off}, place: bay, time: 1 min, undo: fit_starter}
              |                                              ^^^^^
            b.yaml:6:100: error PR0213: 'fit_starter' already undoes 'remove_starter'
            6 |   knock: {on: starter, text: Knock, change: {plaec: fitted -> off}, place: bay, time: 1 min, undo: fit_starter}
              |                                                                                                    ^^^^^^^^^^^
              = here: a.yaml:39:3
              = note: each operation needs one of its own that undoes it
            """,
            complaints);
    }

    [Fact]
    public void Read_UnknownPlaceEnergyAndTouchedKind_AllTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, place: bey, time: 1 min, energy: [electric], touches: [dust_covr]}
            """));
        Assert.Equal(
            """
            b.yaml:6:44: error PR0201: there is no place 'bey'; did you mean 'bay'?
            6 |   knock: {on: starter, text: Knock, place: bey, time: 1 min, energy: [electric], touches: [dust_covr]}
              |                                            ^^^
            b.yaml:6:71: error PR0201: there is no energy 'electric'; did you mean 'electrical'?
            6 |   knock: {on: starter, text: Knock, place: bey, time: 1 min, energy: [electric], touches: [dust_covr]}
              |                                                                       ^^^^^^^^
            b.yaml:6:92: error PR0201: there is no kind 'dust_covr'; did you mean 'dust_cover'?
            6 |   knock: {on: starter, text: Knock, place: bey, time: 1 min, energy: [electric], touches: [dust_covr]}
              |                                                                                            ^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_ChangeWithoutArrow_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {place: fitted to off}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:53: error PR0212: 'fitted to off' is not a change of state
            6 |   knock: {on: starter, text: Knock, change: {place: fitted to off}, place: bay, time: 1 min}
              |                                                     ^^^^^^^^^^^^^
              = note: for example 'fitted -> off', 'jack | hoist -> blocks' or 'any -> off'
            """,
            complaints);
    }

    [Fact]
    public void Read_ChangeOfUnknownState_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {place: fited -> off}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:53: error PR0207: 'fited' is not a state of 'starter.place'; did you mean 'fitted'?
            6 |   knock: {on: starter, text: Knock, change: {place: fited -> off}, place: bay, time: 1 min}
              |                                                     ^^^^^
              = note: its states are 'fitted' or 'off'
            """,
            complaints);
    }

    [Fact]
    public void Read_ChangeToTheSameState_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {place: fitted -> fitted}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:53: error PR0212: this changes nothing: both states are the same
            6 |   knock: {on: starter, text: Knock, change: {place: fitted -> fitted}, place: bay, time: 1 min}
              |                                                     ^^^^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_BeforeWithoutStep_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {place: off -> before}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:60: error PR0212: 'before' means the state that the undone step found, and 'knock' undoes nothing
            6 |   knock: {on: starter, text: Knock, change: {place: off -> before}, place: bay, time: 1 min}
              |                                                            ^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_UndoesItself_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, change: {place: fitted -> off}, undo: knock, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:75: error PR0213: 'knock' cannot undo itself
            6 |   knock: {on: starter, text: Knock, change: {place: fitted -> off}, undo: knock, place: bay, time: 1 min}
              |                                                                           ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_UndoOfTwoSteps_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: fit_starter, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:71: error PR0213: 'fit_starter' already undoes 'remove_starter'
            6 |   cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: fit_starter, place: bay, time: 1 min}
              |                                                                       ^^^^^^^^^^^
              = here: a.yaml:39:3
              = note: each operation needs one of its own that undoes it
            """,
            complaints);
    }

    [Fact]
    public void Read_UndoneUndo_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: glue, place: bay, time: 1 min}
              glue: {on: starter, text: Glue, change: {place: off -> fitted}, undo: cut, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:71: error PR0213: 'glue' has an 'undo' itself; what undoes a step is not undone
            6 |   cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: glue, place: bay, time: 1 min}
              |                                                                       ^^^^
              = declared here: b.yaml:7:3
            b.yaml:7:73: error PR0213: 'cut' has an 'undo' itself; what undoes a step is not undone
            7 |   glue: {on: starter, text: Glue, change: {place: off -> fitted}, undo: cut, place: bay, time: 1 min}
              |                                                                         ^^^
              = declared here: b.yaml:6:3
            """,
            complaints);
    }

    [Fact]
    public void Read_UndoOnOtherKind_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: glue, place: bay, time: 1 min}
              glue: {on: oil_pan, text: Glue, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:71: error PR0213: 'glue' works on 'oil_pan'; what undoes this must work on 'starter' or a more general kind
            6 |   cut: {on: starter, text: Cut, change: {place: fitted -> off}, undo: glue, place: bay, time: 1 min}
              |                                                                       ^^^^
              = declared here: b.yaml:7:3
            """,
            complaints);
    }

    [Fact]
    public void Read_UndoThatDoesNotReturn_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              drop: {on: oil_pan, text: Drop, change: {place: fitted -> lowered}, undo: lift, place: bay, time: 1 min}
              lift: {on: oil_pan, text: Lift, change: {place: off -> fitted}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:7:3: error PR0213: 'lift' does not bring 'oil_pan.place' back from 'lowered' to 'fitted'
            7 |   lift: {on: oil_pan, text: Lift, change: {place: off -> fitted}, place: bay, time: 1 min}
              |   ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_StateWithoutWayBack_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            aspects:
              starter.lid: {states: [shut, open], normal: shut}
            operations:
              pry: {on: starter, text: Pry, change: {lid: shut -> open}, place: bay, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:8:3: error PR0214: nothing leads 'starter.lid' back from 'open' to 'shut'
            8 |   pry: {on: starter, text: Pry, change: {lid: shut -> open}, place: bay, time: 1 min}
              |   ^^^
              = note: name the operation that undoes this as 'undo', or say 'mark: yes' of the aspect
            """,
            complaints);
    }

    [Fact]
    public void Read_MarkWithoutWayBack_IsFine()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            aspects:
              starter.lid: {states: [shut, open], normal: shut, mark: yes}
            operations:
              pry: {on: starter, text: Pry, change: {lid: shut -> open}, place: bay, time: 1 min}
            """));
        Assert.Equal("", complaints);
    }

    [Fact]
    public void Read_OperationWithoutPlace_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, time: 1 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0215: 'knock' has no 'place'
            6 |   knock: {on: starter, text: Knock, time: 1 min}
              |   ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_TimeOfOtherDimension_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, place: bay, time: 3 in}
            """));
        Assert.Equal(
            """
            b.yaml:6:55: error PR0215: a duration is due, not a length
            6 |   knock: {on: starter, text: Knock, place: bay, time: 3 in}
              |                                                       ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_TimeBelowZero_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            operations:
              knock: {on: starter, text: Knock, place: bay, time: -3..5 min}
            """));
        Assert.Equal(
            """
            b.yaml:6:55: error PR0215: labour has two ends, and neither is below zero
            6 |   knock: {on: starter, text: Knock, place: bay, time: -3..5 min}
              |                                                       ^^^^^^^^^
            """,
            complaints);
    }
}
