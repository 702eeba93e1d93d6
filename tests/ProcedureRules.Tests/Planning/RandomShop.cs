using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Tests.Inference;

namespace ProcedureRules.Tests.Planning;

/// <summary>Random worlds: parts with aspects, pairs of operations, needs, orders, whiles, choices, prohibitions, open facts, cautions.</summary>
internal static class RandomShop
{
    private static readonly string[] Kinds = ["apron", "bracket", "cover", "duct", "engine"];

    public static Shop From(byte[] bytes, bool isTwoJobs = false)
    {
        var dice = new Dice(bytes);
        var shop = new Shop();
        foreach (var kind in Kinds)
        {
            shop.Aspect($"{kind}.place", "fitted", "loose", "off");
            shop.Mark($"{kind}.unit", "old", "new");
            shop.Part(kind, kind, kind != "engine" && dice.Throw(6) == 1 ? Truth.Unknown : Truth.Yes);
        }
        if (dice.Throw(2) == 1) shop.Part("second_cover", "cover");
        var facts = Kinds.Select(kind => shop.YesNo(kind, "rusty")).ToList();
        foreach (var fact in facts)
            if (dice.Throw(3) is var said and > 0) shop.Says(fact, Value.Of(said == 1));
        foreach (var kind in Kinds) AddOperations(shop, dice, kind);
        var operations = Kinds.SelectMany(kind => new[] { $"remove_{kind}", $"fit_{kind}", $"renew_{kind}" }).ToList();
        var removals = Kinds.Select(kind => $"remove_{kind}").ToList();

        Test? Maybe() => dice.Throw(3) == 1 ? (dice.Throw(2) == 0 ? Shop.Yes(dice.Pick(facts)) : Shop.No(dice.Pick(facts))) : null;
        (string, string)? Moment() => dice.Throw(4) == 1 ? ($"{dice.Pick(Kinds)}.place", dice.Pick<string>(["fitted", "loose|off", "off"])) : null;

        shop.Do("renew_engine", "engine");
        if (isTwoJobs) shop.For("other").Do($"renew_{dice.Pick(Kinds)}", "engine");
        for (var i = 0; i < 10 && !dice.IsSpent; i++)
        {
            if (isTwoJobs) shop.For(dice.Throw(2) == 0 ? "job" : "other");
            switch (dice.Throw(10))
            {
                case 0 or 1 or 2 or 3:
                    shop.Needs(dice.Pick(operations), $"{dice.Pick(Kinds)}.place", dice.Pick<string>(["off", "off", "loose|off", "fitted"]), Maybe(), at: Moment());
                    break;
                case 4:
                    shop.Order(dice.Pick(operations), dice.Pick(operations), Maybe(), Moment());
                    break;
                case 5:
                    shop.While($"{dice.Pick(Kinds)}.place", "off", $"{dice.Pick(Kinds)}.place", dice.Pick<string>(["off", "loose|off", "fitted|loose"]));
                    break;
                case 6:
                    var on = dice.Pick(Kinds);
                    shop.OneOf($"way {i}", on, ($"remove_{on}", dice.Throw(2), Maybe()), ($"renew_{on}", dice.Throw(2), Maybe()));
                    break;
                case 7:
                    var kind = dice.Pick(Kinds);
                    if (dice.Throw(3) == 1) shop.Forbid($"remove_{kind}", kind, Maybe(), dice.Pick<IfUnknown>([IfUnknown.Do, IfUnknown.BehindCheck, IfUnknown.Hold]));
                    else shop.End(kind, "place", dice.Pick<string>(["off", "fitted", "loose"]), Maybe(), i % 2 == 0 ? IfUnknown.Hold : IfUnknown.BehindCheck);
                    break;
                case 8:
                    if (dice.Throw(4) == 1) shop.Stop($"stop {i}", Maybe(), dice.Pick<IfUnknown>([IfUnknown.Do, IfUnknown.BehindCheck, IfUnknown.Hold]));
                    else shop.About(dice.Pick(operations), Shop.Caution($"mind {i}"), Maybe(), Moment());
                    break;
                default:
                    shop.Do($"renew_{dice.Pick(Kinds)}", "engine", Maybe(), dice.Throw(2) == 0 ? IfUnknown.Hold : IfUnknown.BehindCheck);
                    break;
            }
        }
        return shop;
    }

    private static void AddOperations(Shop shop, Dice dice, string kind)
    {
        var place = dice.Pick<string>(["bay", "under", "bench"]);
        shop.Pair($"loosen_{kind}", $"tighten_{kind}", kind, "place: fitted -> loose", place, 5 + dice.Throw(20));
        shop.Pair($"remove_{kind}", $"fit_{kind}", kind, dice.Throw(2) == 0 ? "place: fitted -> off" : "place: fitted | loose -> off", place, 5 + dice.Throw(20));
        shop.Operation($"renew_{kind}", kind, "unit: old -> new", place, 5 + dice.Throw(20), Phase.Work);
        shop.Needs($"renew_{kind}", $"{kind}.place", "off");
    }
}
