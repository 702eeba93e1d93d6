using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>Tests and values as the language would compile them, without the language.</summary>
internal static class Say
{
    public static Test Is(FactKey fact, string word) => Make(
        $"{fact} is {word}",
        beliefs =>
        {
            var bit = 1UL << fact.Fact.Type.Words.ToList().IndexOf(word);
            var open = beliefs.Fact(fact.Part, fact.Fact).Words;
            return open == bit ? Truth.Yes : (open & bit) == 0 ? Truth.No : Truth.Unknown;
        },
        new Reading.OfFact(fact));

    public static Test Yes(FactKey fact) => Is(fact, "yes");

    public static Test Less(FactKey fact, double millimetres) => Make(
        $"{fact} < {millimetres} mm",
        beliefs => Quantity.LessThan(beliefs.Fact(fact.Part, fact.Fact).Quantity, Quantity.Of(millimetres, "mm")),
        new Reading.OfFact(fact));

    public static Test DemandedLess(FactKey fact, double millimetres) => Make(
        $"demanded({fact}) < {millimetres} mm",
        beliefs => Quantity.LessThan(beliefs.Demanded(fact.Part, fact.Fact), Quantity.Of(millimetres, "mm")),
        new Reading.OfDemand(fact));

    public static Test Holds(Relation relation, Part a, Part b) => Make(
        $"{relation}({a}, {b})", beliefs => beliefs.Related(relation, a, b), new Reading.OfRelation(relation, a, b));

    public static Test Has(Part part) => Make($"any({part})", beliefs => beliefs.Exists(part), new Reading.OfPart(part));

    public static Test Not(Test a) => Combine($"not {a.Text}", (x, _) => Kleene.Not(x), a, a);

    public static Test And(Test a, Test b) => Combine($"{a.Text} and {b.Text}", Kleene.And, a, b);

    public static Test Or(Test a, Test b) => Combine($"{a.Text} or {b.Text}", Kleene.Or, a, b);

    public static ValueExpression Constant(Value value) => new()
    {
        Text = "constant",
        Type = value.Type,
        Evaluate = (_, _) => value,
        Reads = (_, _) => [],
    };

    public static ValueExpression Millimetres(double low, double? high = null) => Constant(World.Millimetres(low, high));

    public static ValueExpression Plus(FactKey fact, double millimetres) => new()
    {
        Text = $"{fact} + {millimetres} mm",
        Type = fact.Fact.Type,
        Evaluate = (beliefs, _) => Value.Of(fact.Fact.Type, beliefs.Fact(fact.Part, fact.Fact).Quantity + Quantity.Of(millimetres, "mm")),
        Reads = (_, _) => [new Reading.OfFact(fact)],
    };

    public static ValueExpression Demanded(FactKey fact) => new()
    {
        Text = $"demanded({fact})",
        Type = fact.Fact.Type,
        Evaluate = (beliefs, _) => Value.Of(fact.Fact.Type, beliefs.Demanded(fact.Part, fact.Fact)),
        Reads = (_, _) => [new Reading.OfDemand(fact)],
    };

    public static ValueExpression If(Test condition, Value yes, Value no) => new()
    {
        Text = $"if({condition.Text}, ...)",
        Type = yes.Type,
        Evaluate = (beliefs, binding) => condition.Evaluate(beliefs, binding) switch
        {
            Truth.Yes => yes,
            Truth.No => no,
            _ => yes.Hull(no),
        },
        Reads = condition.Reads,
    };

    private static Test Make(string text, Func<IBeliefs, Truth> evaluate, Reading reading) =>
        new() { Text = text, Evaluate = (beliefs, _) => evaluate(beliefs), Reads = (_, _) => [reading] };

    private static Test Combine(string text, Func<Truth, Truth, Truth> combine, Test a, Test b) => new()
    {
        Text = text,
        Evaluate = (beliefs, binding) => combine(a.Evaluate(beliefs, binding), b.Evaluate(beliefs, binding)),
        Reads = (binding, parts) => a.Reads(binding, parts).Concat(b.Reads(binding, parts)),
    };
}
