namespace ProcedureRules.Yaml;

/// <summary>Bounds that no honest file meets, so that a hostile one costs little.</summary>
internal static class YamlLimits
{
    /// <summary>The most characters of a file.</summary>
    public const int Characters = 4 * 1024 * 1024;

    /// <summary>The most lists and mappings within one another.</summary>
    public const int Depth = 64;

    /// <summary>The most values of a file, keys included.</summary>
    public const int Nodes = 200_000;
}
