using System.Reflection;
using Xunit;

namespace ProcedureRules.Tests.Repository;

/// <summary>The library must stay free of the compiler platform: no assembly reachable from src/ may reference it.</summary>
public class RoslynFreeTests
{
    [Fact]
    public void Sources_ReachableAssemblies_ReferenceNoCompilerPlatform()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<Assembly>([Assembly.Load("ProcedureRules"), Assembly.Load("ProcedureRules.Reports")]);
        var offenders = new List<string>();
        while (open.TryDequeue(out var assembly))
        {
            if (!seen.Add(assembly.FullName!)) continue;
            foreach (var reference in assembly.GetReferencedAssemblies())
            {
                if (reference.Name!.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal))
                    offenders.Add($"{assembly.GetName().Name} -> {reference.Name}");
                open.Enqueue(Assembly.Load(reference));
            }
        }

        Assert.Empty(offenders);
        Assert.True(seen.Count > 10, "the walk reached too few assemblies to prove anything");
    }
}
