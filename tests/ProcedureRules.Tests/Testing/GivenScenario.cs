using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using ProcedureRules.Tests.Docs;

namespace ProcedureRules.Tests.Testing;

/// <summary>Scenarios on the pack of the reference.</summary>
internal static class GivenScenario
{
    /// <summary>The vehicle and the job; what a scenario says further stands below it.</summary>
    public const string Head = """
        scenario: a pan
        vehicle: {parts: {oil_pan: oil_pan, engine: engine, battery: battery, starter: starter, left_mount: engine_mount, right_mount: engine_mount}}
        jobs: [ change_oil ]

        """;

    private static readonly Lazy<ProcedureEngine> Loaded = new(() => ProcedureEngine.Load([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack)]).Engine!);

    public static ProcedureEngine Engine => Loaded.Value;

    /// <summary>A scenario read below <see cref="Head"/>.</summary>
    public static ScenarioSet Read(string text) => ReadWhole(Head + text);

    public static ScenarioSet ReadWhole(string text) => ScenarioSet.Read(Engine, [new SourceFile("pan.yaml", text)]);

    /// <summary>The mistakes, a line each.</summary>
    public static string Mistakes(string text) => string.Join('\n', Read(text).Diagnostics.Select(mistake => mistake.ToLine()));

    /// <summary>Runs one expectation, in flow style.</summary>
    public static ExpectationResult Judge(string expectation, string more = "")
    {
        var set = Read($"{more}\nexpect: [ {expectation} ]\n");
        Assert(set);
        return set.Cases.Single().Run().Expectations.Single();
    }

    private static void Assert(ScenarioSet set) => Xunit.Assert.Equal("", string.Concat(set.Diagnostics.Select(mistake => mistake.ToSnippet())));
}
