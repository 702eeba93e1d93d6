using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Scheduling;

/// <summary>Files that say who works where and when.</summary>
public static class ShopFile
{
    /// <summary>Reads one.</summary>
    /// <param name="path">The path of the file.</param>
    /// <param name="vocabulary">The names of the packs: a shop speaks of their places and energies.</param>
    public static ShopResult Read(string path, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var diagnostics = new DiagnosticBag();
        var shop = SourceFiles.TryLoad(path, diagnostics) is { } file ? new WorkshopReader(vocabulary, diagnostics).Read(file) : null;
        return new ShopResult(diagnostics.HasErrors ? null : shop, diagnostics.Ordered());
    }
}
