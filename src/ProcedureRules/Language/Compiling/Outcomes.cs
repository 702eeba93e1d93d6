using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Finds conditions that can never hold, and those that always do, from the ranges that facts are declared with.</summary>
internal sealed class Outcomes(CompilerContext context, RuleScope scope)
{
    /// <summary>Whether a condition can hold at all; if not, an error says so. What always holds is a warning.</summary>
    public bool CanHold(Test test, TruthNode node, Resolver names, Func<SourceSpan, string, Diagnostic> never)
    {
        // How many parts of a kind a vehicle has, and so what they add up to, has no bound.
        if (node.All().Any(part => part is IGathers)) return true;
        var binding = NothingKnown.Bind(scope);
        var whole = node.Evaluate(NothingKnown.Beliefs, binding);
        if (whole != Truth.Unknown)
        {
            var text = names.Snippet.Text;
            context.Bag.Add(WithRanges(whole == Truth.Yes ? Messages.AlwaysHolds(test.Span, text) : never(test.Span, text), node));
            return whole == Truth.Yes;
        }

        foreach (var part in node.All().OfType<Comparison>())
        {
            var truth = part.Evaluate(NothingKnown.Beliefs, binding);
            if (truth == Truth.Unknown) continue;
            var (span, text) = (names.Span(part.Syntax), names.Snippet.Text.Substring(part.Syntax.Offset, part.Syntax.Length));
            context.Bag.Add(WithRanges(truth == Truth.Yes ? Messages.AlwaysHolds(span, text) : Messages.PartNeverHolds(span, text), part));
        }

        return true;
    }

    // What a fact can be is written where it is declared.
    private static Diagnostic WithRanges(Diagnostic diagnostic, TruthNode node) => node.All()
        .Select(part => part switch { FactQuantity quantity => quantity.Fact, FactWords words => words.Fact, _ => null })
        .OfType<FactDefinition>()
        .Distinct()
        .Aggregate(diagnostic, (all, fact) => all.Note($"what {Messages.Quote(fact.ToString())} can be is declared here", fact.Span));
}
