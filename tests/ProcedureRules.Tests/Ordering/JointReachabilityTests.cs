using FsCheck.Xunit;
using ProcedureRules.Ordering;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Ordering;

/// <summary>What is proved to have no order has none; the search gives up on the rest.</summary>
public sealed class JointReachabilityTests
{
    private const int MostMoments = 3000;

    [Fact]
    public void IsOutOfReach_AStepNeedsTwoStatesThatNeverMeet_IsProved() => Assert.True(IsOutOfReach(Bolt("home")));

    [Fact]
    public void IsOutOfReach_TheSecondStateMayComeLater_IsLeftOpen() => Assert.False(IsOutOfReach(Bolt("home|raised")));

    [Fact]
    public void IsOutOfReach_ALawKeepsTheTwoApart_IsProved()
    {
        Assert.False(IsOutOfReach(Bolt("home|raised")));
        Assert.True(IsOutOfReach(Bolt("home|raised").While("engine.height", "raised", "mount.joint", "fastened")));
    }

    [Fact]
    public void IsOutOfReach_AStepIsFirstOfOneThatItNeedsDone_IsProved()
    {
        Assert.False(IsOutOfReach(Cover()));
        Assert.True(IsOutOfReach(Cover().Order("renew_engine", "remove_cover")));
    }

    // Nothing that the packs say on a broken law at the start keeps the plan from mending it.
    [Fact]
    public void IsOutOfReach_ALawIsBrokenAtTheStart_IsLeftOpen() =>
        Assert.False(IsOutOfReach(Cover().While("cover.place", "off", "engine.place", "off").Arrives("cover", "place", "off")));

    [Property(MaxTest = 300)]
    public void IsOutOfReach_RandomWorld_NoOrderExists(byte[] bytes)
    {
        var world = Requirements.Under(RandomShop.From(bytes).Believe(), []);
        if (new JointReachability(world).IsOutOfReach()) Assert.False(HasOrder(world), "an order was found");
    }

    [Fact]
    public void IsOutOfReach_RandomWorlds_ProvesWhatOneStateAloneDoesNotShow()
    {
        // The property above would hold of a proof that proves nothing.
        var random = new Random(11);
        var proved = 0;
        for (var i = 0; i < 300; i++)
        {
            var bytes = new byte[random.Next(20, 90)];
            random.NextBytes(bytes);
            var world = Requirements.Under(RandomShop.From(bytes).Believe(), []);
            if (new Reachability(world).OutOfReach().Count == 0 && OrderRings.Find(world) is null && new JointReachability(world).IsOutOfReach()) proved++;
        }

        Assert.InRange(proved, 10, 290);
    }

    // The bolt comes out with the engine raised, its mount is freed with the engine home, and the engine rises with the mount fastened.
    private static Shop Bolt(string freedAt)
    {
        var shop = new Shop();
        shop.Aspect("engine.height", "home", "raised");
        shop.Aspect("mount.joint", "fastened", "free");
        shop.Mark("mount.unit", "old", "new");
        shop.Part("engine", "engine");
        shop.Part("mount", "mount");
        shop.Pair("raise_engine", "lower_engine", "engine", "height: home -> raised")
            .Pair("free_mount", "fasten_mount", "mount", "joint: fastened -> free")
            .Operation("renew_mount", "mount", "unit: old -> new", phase: Phase.Work);
        return shop
            .Needs("raise_engine", "mount.joint", "fastened")
            .Needs("free_mount", "engine.height", freedAt)
            .Needs("renew_mount", "mount.joint", "free").Needs("renew_mount", "engine.height", "raised")
            .End("mount", "unit", "new");
    }

    private static Shop Cover()
    {
        var shop = new Shop();
        shop.Aspect("engine.place", "fitted", "off");
        shop.Aspect("cover.place", "fitted", "off");
        shop.Mark("engine.unit", "old", "new");
        shop.Part("engine", "engine");
        shop.Part("cover", "cover");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").Operation("renew_engine", "engine", "unit: old -> new", phase: Phase.Work);
        return shop.Needs("renew_engine", "cover.place", "off").End("engine", "unit", "new");
    }

    private static bool IsOutOfReach(Shop shop) => new JointReachability(Requirements.Under(shop.Believe(), [])).IsOutOfReach();

    // Every step at every moment, in no order of preference; as far as the bound.
    private static bool HasOrder(World world)
    {
        var motion = new Motion(world, PlannerOptions.Default.MostRepeats);
        var start = Moment.Start(world);
        var seen = new HashSet<string> { start.Key() };
        var queue = new Queue<Moment>([start]);
        while (queue.TryDequeue(out var moment) && seen.Count < MostMoments)
        {
            if (motion.IsEnd(moment)) return true;
            foreach (var then in world.Works.Where(work => motion.Can(moment, work)).Select(work => moment.After(world, work)))
                if (seen.Add(then.Key())) queue.Enqueue(then);
        }

        return false;
    }
}
