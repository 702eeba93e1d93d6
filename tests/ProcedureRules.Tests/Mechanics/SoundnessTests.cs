using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Mechanics;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>What every function of the trade keeps: intervals hold what points within them give, knowing more never widens, nothing throws.</summary>
public class SoundnessTests
{
    private static readonly string[] Names = [.. MechanicsFunctions.All.Select(function => function.Name)];

    public static TheoryData<string> Functions { get; } = new(Names);

    [Theory]
    [MemberData(nameof(Functions))]
    public void Result_OfIntervals_HoldsThatOfNarrowerOnes(string name) => Check.One(
        Config.QuickThrowOnFailure.WithMaxTest(200),
        Prop.ForAll(Shop(name).ToArbitrary(), given => Holds(Result(name, given.Words, given.Wide), Result(name, given.Words, given.Narrow), given)));

    [Theory]
    [MemberData(nameof(Functions))]
    public void Result_OfWhateverFigures_IsOneOfItsDimension(string name) => Check.One(
        Config.QuickThrowOnFailure.WithMaxTest(150),
        Prop.ForAll(Wild(name).ToArbitrary(), given => Result(name, given.Words, given.Figures).Dimension == Call.Find(name).Returns));

    [Property]
    public Property MoreRise_NeverFreesAGap() => Prop.ForAll(Shop("moves_into_gap").ToArbitrary(), given =>
    {
        var (turn, lift) = (given.Narrow[3], given.Narrow[4]);
        var more = given.Narrow.ToArray();
        more[3] = turn + Quantity.Between(given.Extra * 0.1, given.Extra * 0.1, Dimension.Angle);
        more[4] = lift + Quantity.Point(given.Extra * 0.05, Dimension.Length);
        if (more[3].High > Math.PI / 2) return true.ToProperty();
        var (before, after) = (Result("moves_into_gap", given.Words, given.Narrow), Result("moves_into_gap", given.Words, more));
        return (after.Low >= before.Low - Slack(before) && after.High >= before.High - Slack(before)).Label($"{given}: {before} became {after}");
    });

    [Property]
    public Property MoreGap_NeverLowersTheSafeRise() => Prop.ForAll(Shop("safe_rise").ToArbitrary(), given =>
    {
        var more = given.Narrow.ToArray();
        more[1] += Quantity.Point(given.Extra * 0.1, Dimension.Length);
        var (before, after) = (Result("safe_rise", given.Words, given.Narrow), Result("safe_rise", given.Words, more));
        return (after.Low >= before.Low - Slack(before) && after.High >= before.High - Slack(before)).Label($"{given}: {before} became {after}");
    });

    [Property]
    public Property MoreMassAheadOfTheFrontPads_NeverLightensThem() => Prop.ForAll(Shop("front_support_load").ToArbitrary(), given =>
    {
        var at = given.Narrow.Select(value => Quantity.Point(value.Low, value.Dimension)).ToArray();
        if (at[4].Low >= at[5].Low) return true.ToProperty();
        var (mass, centre) = (at[0].Low, at[1].Low);
        var (more, place) = (given.Extra * 500, at[4].Low - (given.Extra * 2));
        var heavier = at.ToArray();
        heavier[0] = Quantity.Point(mass + more, Dimension.Mass);
        heavier[1] = Quantity.Point(((mass * centre) + (more * place)) / (mass + more), Dimension.Length);
        var (before, after) = (Result("front_support_load", given.Words, at), Result("front_support_load", given.Words, heavier));
        return (after.High >= before.Low - 1e-6).Label($"{given}: {before} became {after}");
    });

    private static Quantity Result(string name, string[] words, Quantity[] figures)
    {
        var function = Call.Find(name);
        return function.Implementation(new(function, figures, words));
    }

    private static Property Holds(Quantity wide, Quantity narrow, Case given) =>
        (wide.Low <= narrow.Low + Slack(narrow) && wide.High >= narrow.High - Slack(narrow)).Label($"{given}: {wide} does not hold {narrow}");

    // What rounding leaves: far below the grain at which the language compares.
    private static double Slack(Quantity value) => 1e-13 * Math.Max(1, double.IsFinite(value.High) ? Math.Abs(value.High) : 1);

    private static Gen<Case> Shop(string name)
    {
        var parameters = Call.Find(name).Parameters;
        return from words in Words(name)
               from places in Gen.Choose(0, 1000).Select(place => place / 1000.0).ListOf(parameters.Count * 4)
               from extra in Gen.Choose(0, 1000).Select(place => place / 1000.0)
               select Make(words, [.. places], extra);

        Case Make(string[] words, double[] places, double extra)
        {
            var (wide, narrow) = (new Quantity[parameters.Count], new Quantity[parameters.Count]);
            for (var i = 0; i < parameters.Count; i++)
            {
                if (parameters[i].Dimension is not { } dimension) continue;
                var (from, to) = Usual(parameters[i].Name, dimension);
                var ends = places[(i * 4)..((i * 4) + 4)].Order().Select(place => from + (place * (to - from))).ToArray();
                wide[i] = Quantity.Between(ends[0], ends[3], dimension);
                narrow[i] = places[i * 4] < 0.5 ? Quantity.Between(ends[1], ends[2], dimension) : Quantity.Point(ends[1], dimension);
            }

            return new(words, wide, narrow, extra);
        }
    }

    private static (double From, double To) Usual(string parameter, Dimension dimension) => (parameter, dimension) switch
    {
        ("out" or "up" or "push_at" or "taken_at", _) => (-1.5, 1.5),
        ("gap" or "lift" or "rise", _) => (0, 0.3),
        ("arm", _) => (0.2, 1.5),
        ("rear_at", _) => (1.6, 3),
        ("front_at", _) => (-0.5, 1.5),
        ("diameter", _) => (0.006, 0.03),
        ("pitch", _) => (0.0005, 0.003),
        ("raised", _) => (0.1, 1),
        ("wheelbase", _) => (1.5, 4),
        ("taken", _) => (0, 400),
        (_, Dimension.Mass) => (300, 2500),
        (_, Dimension.Angle) => (0, Math.PI / 2),
        (_, Dimension.Count) => (1, 4),
        _ => (0.05, 1),
    };

    private static Gen<(string[] Words, Quantity[] Figures)> Wild(string name) =>
        from words in Words(name)
        from bounds in Gen.Elements(double.NegativeInfinity, double.PositiveInfinity, -1e300, 1e300, -1, 0, 1e-300, 0.02, 1, 2, 1e9).ListOf(Call.Find(name).Parameters.Count * 2)
        select (words, Figures(name, [.. bounds]));

    private static Quantity[] Figures(string name, double[] bounds) => [.. Call.Find(name).Parameters.Select((parameter, i) =>
    {
        var (low, high) = (Math.Min(bounds[i * 2], bounds[(i * 2) + 1]), Math.Max(bounds[i * 2], bounds[(i * 2) + 1]));
        return parameter.Dimension is not { } dimension ? default
            : double.IsPositiveInfinity(low) || double.IsNegativeInfinity(high) ? Quantity.Anything(dimension)
            : Quantity.Between(low, high, dimension);
    })];

    private static Gen<string[]> Words(string name) => Gen.CollectToArray(Call.Find(name).Parameters, parameter => parameter.Words.Count > 0 ? Gen.Elements(parameter.Words.ToArray()) : Gen.Constant(""));

    private sealed record Case(string[] Words, Quantity[] Wide, Quantity[] Narrow, double Extra)
    {
        public override string ToString() => $"{string.Join(' ', Words)} {string.Join(", ", Narrow)} in {string.Join(", ", Wide)}";
    }
}
