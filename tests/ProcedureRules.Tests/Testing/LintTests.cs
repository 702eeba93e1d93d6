using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using ProcedureRules.Tests.Docs;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What is likely not meant is found; with a reason it is accepted.</summary>
public class LintTests
{
    private const string Job = "jobs: {job_of: {on: oil_pan, text: Do it, do: [ new_work(it) ]}}\n";

    [Theory]
    [InlineData("PR0801", "rules: [{rule: x, for: {s: step}, when: [ s moves battery ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0801", "rules: [{rule: x, when: [ 'oil_pan.dented or oil_pan.condition is sound', oil_pan.dented is no, oil_pan.condition is dented ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0801", "rules: [{rule: x, when: [ 'oil_pan.bolts < 10 or oil_pan.bolts > 20', oil_pan.bolts is 12..18 ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0802", "rules: [{rule: x, when: [ oil_pan.dented is yes or not oil_pan.dented ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0802", "rules: [{rule: x, when: [ 'oil_pan.bolts <= 12 or oil_pan.bolts > 12' ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0803", "rules: [{rule: x, when: [ vehicle.to_be_stored is yes ], then: [{end: battery.ground is off}], ACCEPT}]")]
    [InlineData("PR0804", "rules: [{rule: x, when: [ vehicle.to_be_stored is yes, oil_pan.dented is yes ], then: [{end: battery.ground is off}], ACCEPT}]")]
    [InlineData("PR0805", "facts: {starter.heavy: {type: yes_no, derived: yes, ACCEPT}}\nrules: [{rule: x, when: [ starter.mass > 15 kg ], then: [{set: {starter.heavy: yes}}], OTHER}]")]
    [InlineData("PR0805", "relations: {over: {of: [part, part], text: '{a} is over {b}', ACCEPT}}\nrules: [{rule: x, when: [ 'covers(starter, oil_pan)' ], then: [{relate: 'over(starter, oil_pan)'}], OTHER}]")]
    [InlineData("PR0806", "facts: {starter.colour: {type: text, ask: What colour?, ACCEPT}}")]
    [InlineData("PR0807", "facts: {starter.gap: {type: length, range: 0..1 in, ask: What gap?, ACCEPT}}\nrules: [{rule: x, when: [ starter.gap > 0.5 in ], then: [{notice: x}], OTHER}]")]
    [InlineData("PR0807", "relations: {over: {of: [starter, oil_pan], text: '{a} is over {b}', if_silent: unknown, ACCEPT}}\nrules: [{rule: x, when: [ 'over(starter, oil_pan)' ], then: [{notice: x}], OTHER}]")]
    [InlineData("PR0808", "rules: [{rule: x, when: [ oil_pan.dented is yes ], then: [{warning: x, if_unknown: hold}], ACCEPT}]")]
    [InlineData("PR0809", "operations: {new_work: {on: oil_pan, text: Do it, place: bench, time: 0 min, ACCEPT}}\n" + Job)]
    [InlineData("PR0809", "aspects: {oil_pan.lid: {states: [shut, open], normal: shut}}\noperations: {new_work: {on: oil_pan, text: Open it, change: {lid: shut -> open}, place: bench, time: 1 min, ACCEPT}, shut_it: {on: oil_pan, text: Shut it, change: {lid: open -> shut}, place: bench, time: 1 min}}\n" + Job)]
    [InlineData("PR0810", "rules: [{rule: x, for: {s: step, t: step}, when: [ s does fit_starter, t does fit_pan ], then: [{order: s before t}], ACCEPT}]")]
    [InlineData("PR0811", "operations: {new_work: {on: oil_pan, text: Tighten it to 20 lb.ft, place: bench, time: 1 min, ACCEPT}}\n" + Job)]
    [InlineData("PR0812", "kinds: {starters: {ACCEPT}}")]
    [InlineData("PR0813", "rules: [{rule: x, for: {s: step}, when: [ s does remove_pan ], then: [{one_of: [{option: a, then: [{need: exhaust.hang is tied_up}]}, {option: b, then: [{detail: x}]}]}], ACCEPT}]")]
    [InlineData("PR0816", "rules: [{rule: x, for: {s: step, p: oil_pan}, when: [ s on p, s leaves p.place fitted ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0816", "rules: [{rule: x, for: {s: step, p: oil_pan}, when: [ s touches p, s on p ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0816", "rules: [{rule: x, for: {s: step}, when: [ s does remove_pan, s phase apart ], then: [{notice: x}], ACCEPT}]")]
    [InlineData("PR0817", "aspects: {oil_pan.hang: {states: [fast, loose], normal: fast, while: {loose: [ exhaust.hang is loose ]}, ACCEPT}}")]
    [InlineData("PR0814", "causes: {bent: {on: starter, text: It is bent, ACCEPT}}")]
    [InlineData("PR0814", "relations: {over: {of: [part, part], text: '{a} is over {b}', ACCEPT}}")]
    [InlineData("PR0814", "operations: {new_work: {on: oil_pan, text: Look at it, place: bench, time: 1 min, ACCEPT}}")]
    public void Finding_WithAReason_IsAccepted(string code, string pack)
    {
        var found = Assert.Single(Lint(pack, ""));
        Assert.Equal((code, Severity.Warning), (found.Code, found.Severity));
        Assert.True(found.Span.Line > 0);
        Assert.Empty(Lint(pack, $"accept: {{{code}: it is meant}}"));
    }

    [Theory]
    [InlineData("rules: [{rule: x, when: [ vehicle.to_be_stored is no ], then: [{end: battery.ground is off}], OTHER}]")]
    [InlineData("rules: [{rule: x, for: {s: step, t: step}, when: [ s does fit_starter, t does raise_vehicle ], then: [{order: t before s}], OTHER}]")]
    [InlineData("rules: [{rule: x, when: [ 'oil_pan.bolts < 10 or oil_pan.bolts > 20', oil_pan.bolts is 12..22 ], then: [{notice: x}], OTHER}]")]
    [InlineData("rules: [{rule: x, for: {s: step}, when: [ s does remove_pan ], then: [{one_of: [{option: a, then: [{need: exhaust.hang is tied_up}]}, {option: b, then: [{need: exhaust.hang is loose}]}]}], OTHER}]")]
    [InlineData("rules: [{rule: x, when: [ oil_pan.dented is yes ], then: [{notice: x, if_unknown: hold}], OTHER}]")]
    [InlineData("rules: [{rule: x, for: {s: step, t: step, p: oil_pan}, when: [ s on p, t leaves p.place fitted ], then: [{order: s before t}], OTHER}]")]
    [InlineData("rules: [{rule: x, for: {s: step, p: oil_pan}, when: [ s moves p, s does remove_pan ], then: [{notice: x}], OTHER}]")]
    [InlineData("operations: {new_work: {on: oil_pan, text: Tighten it to 20 lb.ft, place: bench, time: 1 min, basis: common practice}}\n" + Job)]
    [InlineData("aspects: {oil_pan.hang: {states: [fast, loose], normal: fast, while: {loose: [ exhaust.hang is fastened ]}}}")]
    [InlineData("aspects: {oil_pan.hang: {states: [fast, loose], normal: fast, while: {loose: [ exhaust.hang is loose ]}}}\nrules: [{rule: x, for: {s: step}, when: [ s does remove_pan ], then: [{need: exhaust.hang is loose}], OTHER}]")]
    public void Pack_WithNothingWrong_IsLeftInPeace(string pack) => Assert.Empty(Lint(pack, ""));

    [Fact]
    public void Accept_WithoutAFinding_IsAFinding()
    {
        var found = Assert.Single(Lint("kinds: {heat_shield: {accept: {PR0814: sheets name it}}}", ""));

        Assert.Equal("example.yaml:5:32: warning PR0815: there is no finding PR0814 here to accept", found.ToLine());
    }

    [Fact]
    public void Shipped_Packs_HaveNoFinding()
    {
        var engine = ProcedureEngine.Load(RepositoryFiles.PathOf("rules")).Engine!;

        Assert.Equal("", string.Concat(PackLint.Of(engine).Select(finding => finding.ToSnippet())));
    }

    private static List<Diagnostic> Lint(string pack, string accept)
    {
        const string Whole = "because: x, basis: common practice";
        var isRule = pack.Contains("basis", StringComparison.Ordinal) || !pack.StartsWith("rules", StringComparison.Ordinal);
        var text = pack.Replace("OTHER", Whole, StringComparison.Ordinal)
            .Replace(", ACCEPT", $"{(isRule ? "" : $", {Whole}")}{(accept.Length == 0 ? "" : $", {accept}")}", StringComparison.Ordinal)
            .Replace("ACCEPT", accept, StringComparison.Ordinal);
        var loaded = ProcedureEngine.Load([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack), new SourceFile("example.yaml", $"pack: example\nversion: 1.0.0\nabout: x\nuses: [bottom_end]\n{text}\n")]);
        Assert.True(loaded.Engine is not null, string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return [.. PackLint.Of(loaded.Engine).Where(finding => finding.Span.File!.Path == "example.yaml")];
    }
}
