using Xunit.Sdk;

namespace ProcedureRules.Testing.Xunit;

/// <summary>One row of a scenario as a test.</summary>
public sealed class ScenarioTest : IXunitSerializable
{
    private string _folder = "";
    private string? _name;

    /// <summary>For the test framework, which fills it afterwards.</summary>
    public ScenarioTest()
    {
    }

    internal ScenarioTest(string folder, string? name) => (_folder, _name) = (folder, name);

    /// <summary>The case; null for the test that packs and scenarios can be read.</summary>
    public ScenarioCase? Case => _name is null ? null : PackFolder.At(_folder).Cases[_name];

    /// <summary>Runs the case and throws where something is not as expected, with what explains it.</summary>
    /// <param name="cancellation">Ends the run early.</param>
    public void Verify(CancellationToken cancellation = default)
    {
        if (Case is not { } one)
        {
            PackFolder.At(_folder).Verify();
            return;
        }

        var result = one.Run(cancellation);
        if (!result.Passed) throw new ScenarioFailedException(result);
    }

    /// <inheritdoc/>
    public override string ToString() => _name ?? $"{_folder}: packs and scenarios are read";

    void IXunitSerializable.Serialize(IXunitSerializationInfo info)
    {
        ArgumentNullException.ThrowIfNull(info);
        info.AddValue("folder", _folder);
        info.AddValue("name", _name);
    }

    void IXunitSerializable.Deserialize(IXunitSerializationInfo info)
    {
        ArgumentNullException.ThrowIfNull(info);
        (_folder, _name) = (info.GetValue<string>("folder") ?? "", info.GetValue<string>("name"));
    }
}
