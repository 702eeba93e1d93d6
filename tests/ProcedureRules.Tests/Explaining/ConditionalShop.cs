using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Tests.Inference;
using ProcedureRules.Tests.Planning;

namespace ProcedureRules.Tests.Explaining;

/// <summary>Random worlds in which whatever is done hangs on one to three facts, of which some are stated; some of it can also be done in a slower way.</summary>
internal static class ConditionalShop
{
    private static readonly string[] Kinds = ["apron", "bracket", "cover", "duct", "engine"];

    public static Shop From(byte[] bytes)
    {
        var dice = new Dice(bytes);
        var shop = new Shop();
        foreach (var kind in Kinds)
        {
            shop.Aspect($"{kind}.place", "fitted", "off");
            shop.Mark($"{kind}.unit", "old", "new");
            shop.Part(kind, kind);
        }

        var facts = Kinds.SelectMany(kind => new[] { shop.YesNo(kind, "rusty"), shop.YesNo(kind, "worn") }).ToList();
        foreach (var fact in facts)
            if (dice.Throw(4) is var said and > 0) shop.Says(fact, Value.Of(said == 1));
        foreach (var kind in Kinds)
        {
            shop.Pair($"remove_{kind}", $"fit_{kind}", kind, "place: fitted -> off");
            if (dice.Throw(3) == 0) shop.Pair($"pry_{kind}", $"knock_{kind}", kind, "place: fitted -> off", minutes: 20);
            shop.Operation($"renew_{kind}", kind, "unit: old -> new", phase: ProcedureRules.Packs.Phase.Work);
            shop.Needs($"renew_{kind}", $"{kind}.place", "off");
        }

        shop.End("engine", "unit", "new");
        for (var i = 0; i < 6; i++)
        {
            var when = Enumerable.Range(0, 1 + dice.Throw(3)).Select(_ => dice.Throw(2) == 0 ? Shop.Yes(dice.Pick(facts)) : Shop.No(dice.Pick(facts))).Aggregate(And);
            if (dice.Throw(2) == 0) shop.End(dice.Pick(Kinds[..^1]), "unit", "new", when);
            else if (dice.Throw(4) == 0 && dice.Pick(Kinds[..^1]) is var kept) shop.Forbid($"remove_{kept}", kept, when);
            else shop.Needs($"renew_{dice.Pick(Kinds)}", $"{dice.Pick(Kinds)}.place", "off", when);
        }

        return shop;
    }

    private static Test And(Test one, Test other) => new()
    {
        Text = $"{one.Text} and {other.Text}",
        Evaluate = (beliefs, binding) => Kleene.And(one.Evaluate(beliefs, binding), other.Evaluate(beliefs, binding)),
        Reads = (binding, parts) => [.. one.Reads(binding, parts), .. other.Reads(binding, parts)],
    };
}
