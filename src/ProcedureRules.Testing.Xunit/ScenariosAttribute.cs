using System.Runtime.CompilerServices;
using Xunit;
using Xunit.v3;

namespace ProcedureRules.Testing.Xunit;

/// <summary>Turns the scenarios beside packs into tests: each row becomes a test with its own name, shown at its line of the YAML file. The method takes a <see cref="ScenarioTest"/>.</summary>
/// <param name="folder">The folder of packs; a relative one is looked for beside the test assembly, then in each folder above it.</param>
/// <param name="sourceFile">Filled in by the compiler.</param>
/// <param name="sourceLine">Filled in by the compiler.</param>
[AttributeUsage(AttributeTargets.Method)]
[XunitTestCaseDiscoverer(typeof(ScenarioDiscoverer))]
public sealed class ScenariosAttribute(string folder, [CallerFilePath] string? sourceFile = null, [CallerLineNumber] int sourceLine = -1)
    : FactAttribute(sourceFile, sourceLine)
{
    /// <summary>The folder of packs, as it is written.</summary>
    public string Folder { get; } = folder;

    /// <summary>Only cases whose name, or whose file, holds these words; all where it is null.</summary>
    public string? Filter { get; set; }
}
