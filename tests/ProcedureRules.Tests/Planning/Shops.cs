using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Planning;

/// <summary>Small worlds that several tests share.</summary>
internal static class Shops
{
    /// <summary>A starter whose work needs the ground cable off, on a vehicle that is raised for it.</summary>
    public static Shop Starter()
    {
        var shop = new Shop();
        shop.Aspect("vehicle.height", "ground", "raised");
        shop.Aspect("battery.ground", "connected", "off");
        shop.Aspect("starter.place", "fitted", "off");
        shop.Mark("starter.unit", "old", "new");
        shop.Part("battery", "battery");
        shop.Part("starter", "starter");
        return shop
            .Pair("raise_vehicle", "lower_vehicle", "vehicle", "height: ground -> raised")
            .Pair("disconnect_ground", "connect_ground", "battery", "ground: connected -> off", minutes: 5)
            .Pair("remove_starter", "fit_starter", "starter", "place: fitted -> off", "under", 30)
            .Also(it => it.Operation("renew_starter", "starter", "unit: old -> new", "bench", phase: Phase.Work))
            .Needs("remove_starter", "battery.ground", "off").Needs("fit_starter", "battery.ground", "off")
            .Needs("remove_starter", "vehicle.height", "raised").Needs("fit_starter", "vehicle.height", "raised")
            .Needs("renew_starter", "starter.place", "off")
            .End("starter", "unit", "new");
    }

    /// <summary>
    /// An engine on two mounts, raised by a jack and carried by blocks: a mount may be free only while something holds the engine, and nobody
    /// reaches in while only the jack does.
    /// </summary>
    public static Shop Mounts()
    {
        var shop = new Shop();
        shop.Aspect("engine.hold", "none", "jack", "blocks");
        shop.Aspect("engine.height", "down", "raised");
        shop.Aspect("mount.joint", "fastened", "free");
        shop.Aspect("pan.place", "fitted", "off");
        shop.Part("engine", "engine");
        shop.Part("left_mount", "mount");
        shop.Part("right_mount", "mount");
        shop.Part("pan", "pan");
        return shop
            .Pair("jack_engine", "release_jack", "engine", "hold: none -> jack", "under")
            .Pair("block_engine", "unblock_engine", "engine", "hold: jack -> blocks", "under")
            .Pair("raise_engine", "lower_engine", "engine", "height: down -> raised", "under")
            .Pair("free_mount", "fasten_mount", "mount", "joint: fastened -> free", "under")
            .Pair("remove_pan", "fit_pan", "pan", "place: fitted -> off", "under", 45)
            .While("mount.joint", "free", "engine.hold", "jack|blocks")
            .Needs("free_mount", "engine.hold", "jack|blocks").Needs("fasten_mount", "engine.hold", "jack|blocks")
            .Needs("raise_engine", "mount.joint", "free").Needs("lower_engine", "mount.joint", "free")
            .Needs("raise_engine", "engine.hold", "jack").Needs("lower_engine", "engine.hold", "jack")
            .Needs("remove_pan", "engine.height", "raised").Needs("fit_pan", "engine.height", "raised")
            .Needs("remove_pan", "engine.hold", "blocks", at: ("engine.height", "raised"))
            .Needs("fit_pan", "engine.hold", "blocks", at: ("engine.height", "raised"))
            .Do("remove_pan", "pan");
    }

    public static Shop Also(this Shop shop, Action<Shop> more)
    {
        more(shop);
        return shop;
    }
}
