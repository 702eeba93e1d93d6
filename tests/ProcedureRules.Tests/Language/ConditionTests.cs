using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>How the entries of <c>when</c> are sorted, and which variables they bring.</summary>
public class ConditionTests
{
    [Theory]
    [InlineData("s leaves x.place fitted", PredicateSort.Leaves, "place", "fitted", true)]
    [InlineData("s reaches x.place off", PredicateSort.Reaches, "place", "off", true)]
    [InlineData("s on x", PredicateSort.On, "", "", true)]
    [InlineData("s touches x", PredicateSort.Touches, "", "", true)]
    [InlineData("s moves x", PredicateSort.Moves, "", "", true)]
    [InlineData("s does remove_pan", PredicateSort.Does, "remove_pan", "", false)]
    [InlineData("s place under", PredicateSort.Place, "under", "", false)]
    [InlineData("s energy load", PredicateSort.Energy, "load", "", false)]
    [InlineData("s phase back", PredicateSort.Phase, "back", "", false)]
    public void Pattern_OnAStep_HasItsPredicateAndSlots(string condition, PredicateSort sort, string name, string detail, bool hasPart)
    {
        var rule = Rule("s: step, x: part", $"s touches x, {condition}", "detail: x");
        Assert.Equal(new Pattern(new(sort, name, detail), 0, hasPart ? 1 : -1, condition), rule.Patterns[1]);
    }

    [Fact]
    public void Pattern_OfARelation_HasBothSlotsInOrder() =>
        Assert.Equal(new Pattern(new(PredicateSort.Related, "covers"), 1, 0, "covers(y, x)"), Rule("x: part, y: part", "\"covers(y, x)\"", "stop: x").Patterns[0]);

    [Theory]
    [InlineData("job replace_pan on p", "p")]
    [InlineData("job replace_pan", "oil_pan")]
    [InlineData("job inspect", "vehicle")]
    public void Pattern_OfAJob_BindsItsPart(string condition, string variable)
    {
        var rule = Rule(variable == "p" ? "p: oil_pan" : "", condition, "stop: x");
        var part = Assert.Single(rule.Variables);
        Assert.Equal(variable, part.Name);
        Assert.Equal(new Pattern(new(PredicateSort.Job, condition.Split(' ')[1]), 0, -1, condition), rule.Patterns[0]);
    }

    [Fact]
    public void Kind_NamedInAnExpression_BecomesAVariableWithAPatternOfItsOwn()
    {
        var rule = Rule("", "oil_pan.drop < 2 in, oil_pan.dented", "stop: x");
        Assert.Equal(("oil_pan", Sort.Part, 0), (rule.Variables[0].Name, rule.Variables[0].Sort, rule.Variables[0].Slot));
        Assert.Equal([new Pattern(new(PredicateSort.Part, "oil_pan"), 0, -1, "oil_pan")], rule.Patterns);
        Assert.Equal(["oil_pan.drop < 2 in", "oil_pan.dented"], rule.Tests.Select(test => test.Text));
    }

    [Fact]
    public void Variable_OfASpecialKind_IsNarrowedToIt()
    {
        var rule = Rule("p: oil_pan, x: part", "\"covers(x, p)\"", "stop: x");
        Assert.Equal([PredicateSort.Related, PredicateSort.Part], rule.Patterns.Select(pattern => pattern.Predicate.Sort));
        Assert.Equal("oil_pan", rule.Patterns[1].Predicate.Name);
    }

    [Fact]
    public void State_AsAnEntry_IsAMoment()
    {
        var rule = Rule("s: step", "s on oil_pan, vehicle.height is not raised", "detail: x");
        var moment = Assert.Single(rule.Moments);
        Assert.Equal((1, "height", 0b01UL), (rule.Variables[moment.Slot].Kind!.Name == "vehicle" ? 1 : 0, moment.Aspect.Name, moment.States.Bits));
        Assert.Empty(rule.Tests);
    }

    [Fact]
    public void State_AtTheStart_IsKeptApart()
    {
        var rule = Rule("", "\"at_start(vehicle.height is raised)\"", "set: {oil_pan.needed: 2 in}");
        Assert.Equal("height", Assert.Single(rule.AtStart).Aspect.Name);
        Assert.Empty(rule.Moments);
    }

    [Fact]
    public void Step_GuardedByAStateAlone_IsAnyStep()
    {
        var rule = Rule("s: step", "engine.hold is jack", "detail: x");
        Assert.Contains(new Pattern(new(PredicateSort.Step), 0, -1, "step"), rule.Patterns);
    }

    [Fact]
    public void Relation_UnderNot_IsATest()
    {
        var rule = Rule("x: part, y: part", "\"covers(x, y)\", \"not covers(y, x)\"", "stop: x");
        Assert.Equal("not covers(y, x)", Assert.Single(rule.Tests).Text);
    }

    [Fact]
    public void Relation_ThatHoldsInAState_BringsItAsAMomentWhereThereIsOne()
    {
        var guarded = Rule("x: part, s: step", "\"hangs_on(x, engine)\", s on x", "detail: x");
        Assert.Equal((0, "place", 0b01UL), (guarded.Moments[0].Slot, guarded.Moments[0].Aspect.Name, guarded.Moments[0].States.Bits));
        Assert.Empty(Rule("x: part", "\"hangs_on(x, engine)\"", "stop: x").Moments);
    }

    [Fact]
    public void Conditions_OfARule_AreEvaluatedWithoutAllocating()
    {
        var (rules, _) = Compile(RuleText("", "\"oil_pan.drop + 1 in < oil_pan.needed or fan_shroud.pieces is [one_piece, none] and not oil_pan.dented\"", "stop: x"));
        var rule = rules.Rules[0];
        var (test, binding, beliefs) = (rule.Tests[0], SupposedBeliefs.Bind(rules, rule), new Frozen());
        test.Evaluate(beliefs, binding);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) test.Evaluate(beliefs, binding);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private sealed class Frozen : IBeliefs
    {
        public Value Fact(Part part, FactDefinition fact) => Value.Unknown(fact);

        public Quantity Demanded(Part part, FactDefinition fact) => default;

        public Quantity Allowed(Part part, FactDefinition fact) => default;

        public Truth Related(Relation relation, Part a, Part b) => default;

        public Truth Exists(Part part) => default;

        public IReadOnlyList<Part> PartsOf(Kind kind) => [];
    }
}
