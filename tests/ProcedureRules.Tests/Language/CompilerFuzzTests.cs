using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Language;

/// <summary>Whatever stands in a rule or a table, compiling it ends with a rule or with a message, never with an exception.</summary>
public class CompilerFuzzTests
{
    private static readonly PackSet Packs = PackReader.Read([new SourceFile("shop.yaml", GivenLanguage.Shop)], new DiagnosticBag());

    private static readonly string[] Keywords =
        ["need", "end", "order", "forbid", "do", "offer", "set", "at_least", "at_most", "relate", "danger", "check", "tool", "supply", "detail", "slower", "for", "against", "exclude", "stop", "wait"];

    private static readonly string[] Phrases =
        [
            "s on oil_pan", "oil_pan.drop < 2 in", "engine.hold is jack", "oil_pan.place is off", "covers(dust_cover, x)", "remove_starter(starter)", "worn(starter)",
            "s before s", "job replace_pan", "at_start(engine.hold is [jack, hoist])", "s", "x", "starter.place", "oil_pan.needed", "engine.rise", "2 in", "yes", "light | heavy",
            "{oil_pan.drop}", "any(starter)", "fan_shroud.pieces is none", "-", "< 2 in", "1 in .. 2 in", "remove_starter(x)",
        ];

    [Property(MaxTest = 1500)]
    public Property Rule_OfAnyTexts_CompilesOrIsComplainedAbout() => Prop.ForAll(Rule.ToArbitrary(), rule =>
    {
        var (bag, before) = (new DiagnosticBag(), Count(Set()));
        var rules = RuleCompiler.Compile(Set(rule), null, bag);

        // A ring is seen only once the rules stand: a rule that concludes what it reads compiles, and is refused then.
        var isRefused = bag.Ordered().Any(diagnostic => diagnostic.Severity == Severity.Error && diagnostic.Code != "PR0412");

        // A conclusion that names a kind of its own makes a second rule of it.
        return (rules.AuthoredCount > 0) != isRefused && rules.Rules.Count == before + rules.AuthoredCount;
    });

    [Property(MaxTest = 1500)]
    public Property Table_OfAnyCells_CompilesOrIsComplainedAbout() => Prop.ForAll(Table.ToArbitrary(), table =>
    {
        var bag = new DiagnosticBag();
        var rules = RuleCompiler.Compile(Set(table: table), null, bag);
        return rules.AuthoredCount == table.Rows.Count || bag.HasErrors;
    });

    private static Gen<Snippet> Text => Gen.Frequency((4, Gen.Elements(Phrases)), (1, SyntaxGenerators.Text)).Select(text => new Snippet(text));

    private static Gen<RuleDeclaration> Rule =>
        from when in Text.ListOf(3)
        from then in Conclusion.ListOf(2)
        from because in Text
        select new RuleDeclaration
        {
            Name = "fuzz",
            Pack = "shop",
            Span = SourceSpan.None,
            Variables = [(Named("s"), new Snippet("step")), (Named("x"), new Snippet("part"))],
            When = [.. when.Append(new Snippet("s on x"))],
            Then = [.. then],
            Because = because,
        };

    private static Gen<ConclusionDeclaration> Conclusion =>
        from keyword in Gen.Elements(Keywords)
        from text in Text
        from target in Text
        from beside in Text.ListOf(5)
        from count in Gen.Choose(0, 5)
        select new ConclusionDeclaration
        {
            Keyword = keyword,
            Span = SourceSpan.None,
            Text = text,
            Target = target,
            Beside = new[] { "at", "from", "until", "least", "text" }.Take(count).Zip(beside).ToDictionary(pair => pair.First, pair => pair.Second),
        };

    private static Gen<TableDeclaration> Table =>
        from inputs in Gen.Elements("oil_pan.drop", "fan_shroud.rust", "oil_pan.dented", "oil_pan.place").ListOf(2)
        from rows in Text.ListOf(2).ListOf(3)
        select new TableDeclaration
        {
            Name = "fuzz",
            Pack = "shop",
            Span = SourceSpan.None,
            Inputs = [.. inputs.Select(input => new Snippet(input))],
            Output = new Snippet("oil_pan.soak"),
            Rows = [.. rows.Select(row => (IReadOnlyList<Snippet>)[.. row, new Snippet("5 min")])],
        };

    private static ProcedureRules.Yaml.YamlScalar Named(string name) => new(SourceSpan.None, name, ProcedureRules.Yaml.YamlStyle.Plain);

    private static int Count(PackSet packs) => RuleCompiler.Compile(packs, null, new DiagnosticBag()).Rules.Count;

    private static PackSet Set(RuleDeclaration? rule = null, TableDeclaration? table = null) => new()
    {
        Headers = Packs.Headers,
        Vocabulary = Packs.Vocabulary,
        Rules = rule is null ? [] : [rule],
        Tables = table is null ? [] : [table],
    };
}
