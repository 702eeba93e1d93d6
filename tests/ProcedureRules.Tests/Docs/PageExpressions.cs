using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>Runs the expressions of the reference on the vehicle of the reference.</summary>
internal static class PageExpressions
{
    private const string AtStart = "at_start(";

    /// <summary>What an expression gives, as a technician reads it.</summary>
    public static string Evaluate(string expression) =>
        expression.StartsWith(AtStart, StringComparison.Ordinal) ? StateNow(expression[AtStart.Length..^1]) : Render($"{{{expression}}}") is var text && (text == TemplateCompiler.NotKnown || text.EndsWith(": ask)", StringComparison.Ordinal)) ? "unknown" : text;

    /// <summary>What a text with braces reads.</summary>
    public static string Render(string text)
    {
        var page = ReferencePage.Instance;
        var (scope, parts) = Parts(page.Situation);
        var bag = new DiagnosticBag();
        var template = new TemplateCompiler(new CompilerContext(page.Packs, ProcedureEngine.Functions, bag), scope).Compile(new Snippet(text));
        Assert.Equal("", bag.ToSnippets());
        return template!.Render(page.Beliefs, new Binding(parts), UnitSystem.Us);
    }

    // A state at the start is no value of an expression; it is judged where a condition stands.
    private static string StateNow(string state)
    {
        var page = ReferencePage.Instance;
        var (path, word) = (state.Split(" is ")[0].Split('.'), state.Split(" is ")[1]);
        var part = page.Situation.Parts.Single(one => one.Name == path[0]);
        var aspect = page.Packs.Vocabulary.AspectOf(part.Kind, path[1])!;
        return page.Situation.StateNow(part, aspect) == aspect.IndexOf(word) ? "yes" : "no";
    }

    private static (RuleScope Scope, object[] Parts) Parts(Situation situation)
    {
        var scope = new RuleScope("bottom_end") { TakesKinds = false };
        foreach (var part in situation.Parts) scope.Add(part.Name, Sort.Part, part.Kind);
        return (scope, [.. situation.Parts]);
    }
}
