using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about decision tables, whole.</summary>
public class TableMessagesTests
{
    [Fact]
    public void Compile_UnknownWordInCell_IsExplained() => Assert.Equal(
        """
        more.yaml:10:10: error PR0308: 'nun' is none of the words that are due here
        10 |       - [nun, 0 min]
           |          ^^^
           = note: the words are 'none', 'light' or 'heavy'
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - [nun, 0 min]
              - ["light | heavy", 15 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_Gap_IsExplained() => Assert.Equal(
        """
        more.yaml:6:12: error PR0414: no row is for fan_shroud.rust is heavy
        6 |   - table: t
          |            ^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - [none, 0 min]
              - [light, 15 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_GapOfTwoInputs_IsExplained() => Assert.Equal(
        """
        more.yaml:6:12: error PR0414: no row is for fan_shroud.rust is light, oil_pan.drop is 2 in; nor for fan_shroud.rust is heavy, oil_pan.drop is 2 in
        6 |   - table: t
          |            ^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust, oil_pan.drop]
            output: oil_pan.soak
            rows:
              - [none, "-", 0 min]
              - ["light | heavy", "< 2 in", 15 min]
              - ["light | heavy", "> 2 in", 15 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_ManyGaps_IsExplained() => Assert.Equal(
        """
        more.yaml:6:12: error PR0414: no row is for fan_shroud.rust is none, fan_shroud.pieces is one_piece; nor for fan_shroud.rust is none, fan_shroud.pieces is two_piece; nor for fan_shroud.rust is light, fan_shroud.pieces is one_piece; and 5 combinations more
        6 |   - table: t
          |            ^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust, fan_shroud.pieces]
            output: oil_pan.soak
            rows:
              - [none, none, 0 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_Overlap_IsExplained() => Assert.Equal(
        """
        more.yaml:11:10: error PR0415: rows 1 and 2 are both for fan_shroud.rust is light
        11 |       - ["light | heavy", 15 min]
           |          ^^^^^^^^^^^^^^^^^^^^^^^
           = row 1 is here: more.yaml:10:10
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - ["none | light", 0 min]
              - ["light | heavy", 15 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_OverlapOfFigures_IsExplained() => Assert.Equal(
        """
        more.yaml:11:10: error PR0415: rows 1 and 2 are both for oil_pan.drop is 2 in
        11 |       - ["2 in .. 12 in", 15 min]
           |          ^^^^^^^^^^^^^^^^^^^^^^^
           = row 1 is here: more.yaml:10:10
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.drop]
            output: oil_pan.soak
            rows:
              - ["<= 2 in", 0 min]
              - ["2 in .. 12 in", 15 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_WordAgainstFigures_IsExplained() => Assert.Equal(
        """
        more.yaml:10:10: error PR0413: this cell cannot be compared with 'oil_pan.drop', which is a length
        10 |       - [none, 0 min]
           |          ^^^^
           = declared here: shop.yaml:24:3
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.drop]
            output: oil_pan.soak
            rows:
              - [none, 0 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_FigureAgainstWords_IsExplained() => Assert.Equal(
        """
        more.yaml:10:10: error PR0413: this cell cannot be compared with 'fan_shroud.rust', which is one of the words 'none', 'light' or 'heavy'
        10 |       - ["< 2 in", 0 min]
           |          ^^^^^^^^
           = declared here: shop.yaml:41:3
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - ["< 2 in", 0 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_CellOfOtherDimension_IsExplained() => Assert.Equal(
        """
        more.yaml:10:13: error PR0306: 'oil_pan.drop' takes a length, this is a gauge pressure
        10 |       - ["< 2 psi", 0 min]
           |             ^^^^^
           = declared here: shop.yaml:24:3
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.drop]
            output: oil_pan.soak
            rows:
              - ["< 2 psi", 0 min]
              - ["-", 1 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_CellWithRangeAsBound_IsExplained() => Assert.Equal(
        """
        more.yaml:10:10: error PR0413: a comparison in a cell takes one figure, not a range
        10 |       - ["< 1..2 in", 0 min]
           |          ^^^^^^^^^^^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.drop]
            output: oil_pan.soak
            rows:
              - ["< 1..2 in", 0 min]
              - ["-", 1 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_CellOutsideTheRange_IsExplained() => Assert.Equal(
        """
        more.yaml:10:10: warning PR0411: '<= 12 in' always holds and decides nothing
        10 |       - ["<= 12 in", 0 min]
           |          ^^^^^^^^^^
           = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        more.yaml:11:10: error PR0410: '> 12 in' can never hold, so the rule can never fire
        11 |       - ["> 12 in", 1 min]
           |          ^^^^^^^^^
           = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.drop]
            output: oil_pan.soak
            rows:
              - ["<= 12 in", 0 min]
              - ["> 12 in", 1 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_TextAsInput_IsExplained() => Assert.Equal(
        """
        more.yaml:7:14: error PR0413: 'oil_pan.note' is a free text and cannot select a row
        7 |     inputs: [oil_pan.note]
          |              ^^^^^^^^^^^^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [oil_pan.note]
            output: oil_pan.soak
            rows:
              - ["-", 0 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_DemandAsInput_IsExplained() => Assert.Equal(
        """
        more.yaml:7:14: error PR0413: 'engine.rise' only collects demands and cannot select a row
        7 |     inputs: [engine.rise]
          |              ^^^^^^^^^^^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [engine.rise]
            output: oil_pan.soak
            rows:
              - ["-", 0 min]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_OutputOfOtherDimension_IsExplained() => Assert.Equal(
        """
        more.yaml:10:15: error PR0306: 'oil_pan.soak' takes a duration, this is a length
        10 |       - ["-", 2 in]
           |               ^^^^
           = declared here: shop.yaml:31:3
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - ["-", 2 in]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_StateGuardingTable_IsExplained() => Assert.Equal(
        """
        more.yaml:13:12: error PR0406: a state changes during the work and cannot guard 'set', which has no moment
        13 |     when: [vehicle.height is raised]
           |            ^^^^^^^^^^^^^^^^^^^^^^^^
           = note: for the state before the work, write 'at_start(...)' round it
           = the conclusion is here: more.yaml:6:12
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - ["-", 2 min]
            because: x
            basis: common practice
            when: [vehicle.height is raised]
        """));

    [Fact]
    public void Compile_HalfACell_IsExplained() => Assert.Equal(
        """
        more.yaml:10:12: error PR0301: expected a figure after '<', found the end of the text
        10 |       - ["<", 2 min]
           |            ^
        """,
        Complaints("""
        tables:
          - table: t
            inputs: [fan_shroud.rust]
            output: oil_pan.soak
            rows:
              - ["<", 2 min]
            because: x
            basis: common practice
        """));
}
