using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using ProcedureRules.Tests.Repository;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The YAML of the first page: packs load beside the shipped ones, sheets and orders speak of what those know.</summary>
public class ReadmeYamlTests
{
    [Fact]
    public void Blocks_EachByItsReader_HaveNoMistakes()
    {
        var blocks = MarkdownPage.Load("README.md").Blocks.Where(block => block.Language == "yaml").ToList();
        var bag = new DiagnosticBag();
        var shipped = RepositoryFiles.Under("rules", "*.yaml").Select(path => SourceFiles.TryLoad(path, bag)!);
        var written = blocks.Where(block => block.FirstKey == "pack").Select(File);
        var packs = RuleFolder.Read([.. shipped, .. written], bag, RepositoryFiles.PathOf("rules").Replace('\\', '/'));
        RuleCompiler.Compile(packs, ProcedureEngine.Functions, bag);
        var reader = new SheetReader(packs.Vocabulary, packs.Archetypes);
        var sheets = blocks.Where(block => block.FirstKey == "vehicle").ToList();
        foreach (var sheet in sheets) reader.Read(File(sheet), null, bag);
        foreach (var order in blocks.Where(block => block.FirstKey == "work_order")) reader.Read(File(sheets[0]), File(order), bag);

        Assert.NotEmpty(blocks);
        Assert.Equal("", bag.ToSnippets());
        Assert.DoesNotContain(blocks, block => block.FirstKey is not ("pack" or "vehicle" or "work_order"));
    }

    private static SourceFile File(CodeBlock block) => new($"README.md, line {block.Line}", block.Text);
}
