using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Ordering;

/// <summary>Jobs one after the other, each in an order of its own.</summary>
public sealed class JobByJobTests
{
    [Fact]
    public void Of_BothJobsProveTheSame_ProvesItBehindTheLast() =>
        Assert.Equal(
            ["take_pump(pump)", "renew_pump(pump)", "fit_pump(pump)", "take_pan(pan)", "renew_pan(pan)", "fit_pan(pan)", "check_for_leaks(engine)"],
            Order(Pump, Pan));

    [Fact]
    public void Of_FirstJobWaitsForTheSecond_GoesOnWithTheSecondMeanwhile() =>
        Assert.Equal(
            ["take_pump(pump)", "take_pan(pan)", "renew_pan(pan)", "fit_pan(pan)", "renew_pump(pump)", "fit_pump(pump)", "check_for_leaks(engine)"],
            Order(Pump, Pan, shop => shop.Order("fit_pan", "renew_pump")));

    [Fact]
    public void Of_SecondJobAsksForWhatIsDoneForGood_DoesItOnce() =>
        Assert.Equal(
            ["take_pump(pump)", "renew_pump(pump)", "fit_pump(pump)", "take_pan(pan)", "renew_pan(pan)", "fit_pan(pan)", "check_for_leaks(engine)"],
            Order(Pump, ["take_pan", "renew_pump", "renew_pan", "fit_pan", "check_for_leaks"]));

    // The second job finds the engine raised by the first, which waits for it; then the first lowers the engine before the second has made use of it.
    [Fact]
    public void Of_FirstJobUndoesWhatItDidForBoth_DoesItAgainForTheSecond() =>
        Assert.Equal(
            ["raise(engine)", "take_pump(pump)", "grease(engine)", "renew_pump(pump)", "fit_pump(pump)", "lower(engine)", "raise(engine)", "take_pan(pan)", "renew_pan(pan)", "fit_pan(pan)", "lower(engine)", "check_for_leaks(engine)"],
            Order(
                ["raise", "take_pump", "renew_pump", "fit_pump", "lower", "check_for_leaks"],
                ["raise", "grease", "take_pan", "renew_pan", "fit_pan", "lower", "check_for_leaks"],
                shop =>
                {
                    shop.Mark("engine.joints", "dry", "greased");
                    shop.Pair("raise", "lower", "engine", "height: home -> raised").Operation("grease", "engine", "joints: dry -> greased", phase: Phase.Work);
                    return shop.Needs("take_pump", "engine.height", "raised").Needs("take_pan", "engine.height", "raised").Do("grease", "engine").Order("grease", "renew_pump");
                }));

    [Fact]
    public void Of_EachWaitsForTheOther_IsNone() =>
        Assert.Null(Order(Pump, Pan, shop => shop.Order("fit_pan", "take_pump").Order("fit_pump", "take_pan")));

    [Fact]
    public void Of_WhatOneJobLeavesUndone_IsNone() => Assert.Null(Order(["take_pump", "renew_pump"], Pan));

    private static readonly string[] Pump = ["take_pump", "renew_pump", "fit_pump", "check_for_leaks"];

    private static readonly string[] Pan = ["take_pan", "renew_pan", "fit_pan", "check_for_leaks"];

    private static IEnumerable<string>? Order(string[] first, string[] second, Func<Shop, Shop>? more = null)
    {
        var shop = new Shop();
        shop.Part("engine", "engine");
        shop.Mark("engine.leaks", "unchecked", "checked");
        shop.Aspect("engine.height", "home", "raised");
        foreach (var part in new[] { "pump", "pan" })
        {
            shop.Part(part, part);
            shop.Aspect($"{part}.place", "fitted", "off");
            shop.Mark($"{part}.unit", "old", "new");
            shop.Pair($"take_{part}", $"fit_{part}", part, "place: fitted -> off").Operation($"renew_{part}", part, "unit: old -> new", phase: Phase.Work);
            shop.Needs($"renew_{part}", $"{part}.place", "off").End(part, "unit", "new");
        }

        shop.Operation("check_for_leaks", "engine", "leaks: unchecked -> checked", phase: Phase.Prove);
        shop.Do("check_for_leaks", "engine");
        var world = Requirements.Under((more?.Invoke(shop) ?? shop).Believe(), []);
        Step StepOf(string operation) => world.Works.Single(work => work.Step.Operation.Name == operation).Step;
        var end = JobByJob.Of(new Motion(world, PlannerOptions.Default.MostRepeats), [[.. first.Select(StepOf)], [.. second.Select(StepOf)]]);
        return end?.Steps().Select(work => work.Step.Name);
    }
}
