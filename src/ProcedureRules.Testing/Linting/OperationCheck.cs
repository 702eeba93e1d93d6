using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds operations that nothing undoes or that take no time, those that nothing leads to, and figures in them without a basis.</summary>
internal static class OperationCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var offered = subject.Conclusions.Select(entry => entry.Conclusion).OfType<Language.Conclusion.Offer>().Select(offer => offer.Operation).ToHashSet();
        foreach (var operation in subject.Vocabulary.Operations.Values)
        {
            if (!subject.Occurring.Contains(operation) && !offered.Contains(operation))
                yield return new LintFinding(operation.Span, Messages.UnusedName(operation.Span, "operation", operation.Name, "no rule, job or fact brings it, and no state that it leads to is wanted"));
            if (operation.Time.High <= 0) yield return new LintFinding(operation.Span, Messages.NoTime(operation.Span, operation.Name));
            if (operation.UndoneBy is null && operation.Undoes is null)
                foreach (var change in operation.Changes.Where(TakesOut))
                    yield return new LintFinding(operation.Span, Messages.NoUndo(operation.Span, operation.Name, change.Aspect.ToString()));
            if (operation.Basis.Length > 0) continue;
            foreach (var text in operation.Detail.Prepend(operation.Text))
                if (FigureIn(text.Text) is var (start, length))
                    yield return new LintFinding(operation.Span, Messages.NoBasis(text.SpanOf(start, length), text.Text.Substring(start, length)));
        }
    }

    private static bool TakesOut(StateChange change) => !change.Aspect.IsMark && change.From.Has(change.Aspect.Normal) && change.To >= 0 && change.To != change.Aspect.Normal;

    // A bare number counts something; a figure of the trade has a unit.
    private static (int Start, int Length)? FigureIn(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if ((i > 0 && char.IsLetterOrDigit(text[i - 1])) || !Quantity.StartsAt(text.AsSpan(i))) continue;
            if (Quantity.TryReadPrefix(text.AsSpan(i), out var value, out var length, out _) && value.Dimension is not (Dimension.Number or Dimension.Count)) return (i, length);
        }

        return null;
    }
}
