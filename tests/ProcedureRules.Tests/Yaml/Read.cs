using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

/// <summary>Short ways to read YAML in tests.</summary>
internal static class Read
{
    public static (YamlNode? Node, DiagnosticBag Bag) Text(string text)
    {
        var bag = new DiagnosticBag();
        return (YamlReader.Read(new SourceFile("test.yaml", text), bag), bag);
    }

    public static T Clean<T>(string text)
        where T : YamlNode
    {
        var (node, bag) = Text(text);
        Assert.Equal("", bag.ToSnippets());
        return Assert.IsType<T>(node);
    }

    public static string Complaints(string text) => Text(text).Bag.ToSnippets();
}
