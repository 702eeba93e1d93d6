namespace ProcedureRules.ConsoleHost;

/// <summary>The packs and samples that travel with the host.</summary>
internal static class HostFiles
{
    public static string Rules => Path.Combine(AppContext.BaseDirectory, "rules");

    public static string DemoOrder => Path.Combine(AppContext.BaseDirectory, "samples", "jobs", "oil-pan.yaml");
}
