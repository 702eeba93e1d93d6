namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The smallest pack that has a job, and scenarios of it, for tests of the commands that run scenarios.</summary>
internal static class TankBench
{
    /// <summary>The name of the pack's file.</summary>
    public const string File = "bench.yaml";

    public const string Pack = """
        pack: bench
        version: 1.0.0
        about: A tank on a bench.
        places: [ bench ]
        kinds: {vehicle: {}, tank: {}}
        aspects: {tank.fill: {states: [full, empty], normal: full}}
        operations:
          empty_tank: {on: tank, text: "Empty the {it}", change: {fill: full -> empty}, undo: fill_tank, place: bench, time: 5 min}
          fill_tank: {on: tank, text: "Fill the {it}", time: 5 min}
        jobs: {rinse: {on: tank, text: "Rinse the {it}", pass: [ it.fill is empty ]}}
        """;

    /// <summary>A scenario of the pack.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="expectation">What it expects: <c>step: empty_tank</c>.</param>
    public static string Scenario(string title, string expectation) =>
        $"scenario: {title}\nvehicle: {{parts: {{tank: tank}}}}\njobs: [ rinse ]\nexpect: [ {{{expectation}}} ]\n";
}
