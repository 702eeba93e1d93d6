namespace ProcedureRules.Language.Compiling;

/// <summary>
/// The rules behind one that a pack writes: itself, and one more for each kind that only a conclusion names. A vehicle without such a
/// part, or with several, then loses or repeats that conclusion only, and never a caution beside it.
/// </summary>
internal sealed class RuleGroup(CompilerContext context, RuleParts main)
{
    private readonly List<RuleParts> _others = [];

    /// <summary>Compiles a conclusion into the rule it belongs to; false where it is wrong.</summary>
    public bool Add(Func<RuleParts, Conclusion?> compile)
    {
        var fork = main.Fork();
        if (compile(fork) is not { } conclusion) return false;
        var home = fork.Added.Any() ? _others.Find(other => other.Added.SequenceEqual(fork.Added)) : main;
        if (home is null) _others.Add(home = fork);
        home.Conclusions.Add(conclusion);
        home.Reads.Add(fork.Reads);
        return true;
    }

    /// <summary>Compiles a conclusion that is made of terms alone.</summary>
    public bool Add(Func<Terms, Conclusion?> compile) => Add((RuleParts fork) => compile(new(context, fork)));

    /// <summary>The rules, the main one first; it is left out where it would conclude nothing.</summary>
    public IEnumerable<CompiledRule> Build(string pack, Template? because, string basis)
    {
        foreach (var rule in _others.Prepend(main).Where(rule => rule.Conclusions.Count > 0))
        {
            context.Reads.Add(rule.Reads);
            yield return rule.Build(pack, because, basis);
        }
    }
}
