using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>
/// Makes the rules behind an operation or a job: one for all that is about the part itself, and one more for each item that names a
/// kind, so that a vehicle without such a part loses that item only.
/// </summary>
internal sealed class PartRules(CompilerContext context, RuleParts main, string pack, Template? because, string basis)
{
    private readonly List<CompiledRule> _others = [];

    /// <summary>Compiles one item, in the main rule if it names no kind, else in a rule named after it.</summary>
    public void Add(string item, Func<RuleParts, ConclusionCompiler, Conclusion?> compile, SourceSpan span)
    {
        var parts = new RuleParts($"{main.Name}, {item}", main.Scope.Fork(), span);
        if (compile(parts, new(context, parts, IfUnknown.Default)) is not { } conclusion) return;
        if (parts.Scope.Variables.Count == main.Scope.Variables.Count)
        {
            main.Conclusions.Add(conclusion);
            return;
        }

        parts.Patterns.AddRange(main.Patterns);
        foreach (var (test, node, names) in main.Tests) parts.Add(test, node, names);
        parts.Conclusions.Add(conclusion);
        context.Reads.Add(parts.Reads);
        _others.Add(parts.Build(pack, because, basis));
    }

    /// <summary>All rules, the main one first; it is left out where it would conclude nothing.</summary>
    public IEnumerable<CompiledRule> Build() => main.Conclusions.Count > 0 ? _others.Prepend(main.Build(pack, because, basis)) : _others;
}
