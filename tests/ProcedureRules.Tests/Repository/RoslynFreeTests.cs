using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Xunit;

namespace ProcedureRules.Tests.Repository;

/// <summary>The library stays free of the compiler platform: nothing it brings along may reference it.</summary>
public class RoslynFreeTests
{
    [Fact]
    public void Sources_ReachableAssemblies_ReferenceNoCompilerPlatform()
    {
        var folder = AppContext.BaseDirectory;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>(["ProcedureRules", "ProcedureRules.Reports", "ProcedureRules.Testing", "ProcedureRules.Testing.Xunit"]);
        var offenders = new List<string>();
        while (open.TryDequeue(out var name))
        {
            if (!seen.Add(name)) continue;
            // Assemblies of the shared framework are not in this folder; it is free of the compiler platform itself.
            var path = Path.Combine(folder, name + ".dll");
            if (!File.Exists(path)) continue;
            using var file = new PEReader(File.OpenRead(path));
            var metadata = file.GetMetadataReader();
            foreach (var handle in metadata.AssemblyReferences)
            {
                var reference = metadata.GetString(metadata.GetAssemblyReference(handle).Name);
                if (reference.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal)) offenders.Add($"{name} -> {reference}");
                open.Enqueue(reference);
            }
        }

        Assert.Empty(offenders);
        Assert.Superset(new HashSet<string> { "NRules", "NRules.RuleModel", "YamlDotNet" }, seen);
    }
}
