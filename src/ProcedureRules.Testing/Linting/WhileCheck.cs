using ProcedureRules.Diagnostics;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds what is to be kept while a state lasts though no rule ever brings it about: plans that lead to the state have no order then.</summary>
internal static class WhileCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var needed = subject.Conclusions.SelectMany(entry => Needed(entry.Conclusion)).ToList();
        return from law in subject.Rules.Whiles
               where !law.States.Has(law.OtherAspect.Normal) && !needed.Exists(state => ReferenceEquals(state.Aspect, law.OtherAspect) && (state.States.Bits & law.States.Bits) != 0)
               select new LintFinding(law.Aspect.Span, Messages.NobodyKeeps(law.Aspect.Span, law.Text));
    }

    private static IEnumerable<StateCondition> Needed(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Need need => [need.State],
        Conclusion.Waypoints way => way.States,
        _ => [],
    };
}
