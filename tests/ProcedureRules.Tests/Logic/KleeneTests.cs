using FsCheck.Xunit;
using ProcedureRules.Logic;
using Xunit;
using static ProcedureRules.Logic.Kleene;
using static ProcedureRules.Logic.Truth;

namespace ProcedureRules.Tests.Logic;

/// <summary>The truth tables of strong Kleene logic: S. C. Kleene, Introduction to Metamathematics (1952), pp. 332-335.</summary>
public class KleeneTests
{
    [Theory]
    [InlineData(No, No, Yes, No, No, Yes, Yes)]
    [InlineData(No, Unknown, Yes, No, Unknown, Yes, Unknown)]
    [InlineData(No, Yes, Yes, No, Yes, Yes, No)]
    [InlineData(Unknown, No, Unknown, No, Unknown, Unknown, Unknown)]
    [InlineData(Unknown, Unknown, Unknown, Unknown, Unknown, Unknown, Unknown)]
    [InlineData(Unknown, Yes, Unknown, Unknown, Yes, Yes, Unknown)]
    [InlineData(Yes, No, No, No, Yes, No, No)]
    [InlineData(Yes, Unknown, No, Unknown, Yes, Unknown, Unknown)]
    [InlineData(Yes, Yes, No, Yes, Yes, Yes, Yes)]
    public void Connectives_EveryPair_MatchThePublishedTable(Truth a, Truth b, Truth not, Truth and, Truth or, Truth implies, Truth iff)
    {
        Assert.Equal(not, Not(a));
        Assert.Equal(and, And(a, b));
        Assert.Equal(or, Or(a, b));
        Assert.Equal(implies, Implies(a, b));
        Assert.Equal(iff, Iff(a, b));
    }

    [Property]
    public bool Not_OfBoth_TurnsAndIntoOr(Truth a, Truth b) => Not(And(a, b)) == Or(Not(a), Not(b));

    [Property]
    public bool AndOr_OfThree_Distribute(Truth a, Truth b, Truth c) =>
        And(a, Or(b, c)) == Or(And(a, b), And(a, c)) && Or(a, And(b, c)) == And(Or(a, b), Or(a, c));

    [Property]
    public bool AndOr_OfThree_AssociateAndCommute(Truth a, Truth b, Truth c) =>
        And(a, And(b, c)) == And(And(a, b), c) && Or(a, Or(b, c)) == Or(Or(a, b), c) && And(a, b) == And(b, a) && Or(a, b) == Or(b, a);

    [Property]
    public bool AllAny_OfMany_FoldTheConnectives(Truth[] values) =>
        All(values) == values.Aggregate(Yes, And) && Any(values) == values.Aggregate(No, Or) && All(values) == Not(Any(values.Select(Not)));

    [Property]
    public bool Connectives_WhenAnUnknownIsLearned_KeepWhatWasKnown(Truth a, Truth b, bool learned)
    {
        var known = a == Unknown ? Of(learned) : a;
        return Keeps(Not(a), Not(known)) && Keeps(And(a, b), And(known, b)) && Keeps(Or(a, b), Or(known, b))
            && Keeps(Implies(a, b), Implies(known, b)) && Keeps(Implies(b, a), Implies(b, known)) && Keeps(Iff(a, b), Iff(known, b));

        static bool Keeps(Truth before, Truth after) => before == Unknown || before == after;
    }

    [Fact]
    public void AllAny_OfNone_AreYesAndNo()
    {
        Assert.Equal(Yes, All([]));
        Assert.Equal(No, Any([]));
    }
}
