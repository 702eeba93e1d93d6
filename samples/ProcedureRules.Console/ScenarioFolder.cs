using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary>Packs with the scenarios beside them.</summary>
internal static class ScenarioFolder
{
    /// <summary>Loads both and writes their mistakes; null where there is nothing to run.</summary>
    public static (ProcedureEngine Engine, IReadOnlyList<ScenarioCase> Cases)? Open(HostConsole console, string folder, string? filter)
    {
        if (Load(console, folder) is not { } engine) return null;
        var scenarios = ScenarioSet.Beside(engine, folder);
        console.Write(scenarios.Diagnostics);
        if (scenarios.HasErrors) return null;
        var cases = scenarios.Cases.Where(one => one.IsMeantBy(filter)).ToList();
        if (cases.Count > 0) return (engine, cases);
        console.Error.WriteLine(filter is null ? $"{folder}: there are no scenarios" : $"{folder}: no case has '{filter}' in its name or path");
        return null;
    }

    /// <summary>Loads packs and writes their mistakes; null where they cannot be used.</summary>
    public static ProcedureEngine? Load(HostConsole console, string folder)
    {
        var loaded = ProcedureEngine.Load(folder);
        console.Write(loaded.Diagnostics);
        return loaded.Engine;
    }
}
