using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads what an operation does to the aspects of its part: <c>fitted -> off</c>.</summary>
internal static class ChangeReader
{
    private const string Arrow = "->";
    private const int Before = -1;

    /// <summary>The changes written; where an undoing operation writes none, those of its step in reverse.</summary>
    public static IReadOnlyList<StateChange> Read(OperationDraft written, PackDraft draft)
    {
        if (!written.Map.Has("change"))
            return Reversed(written.Step?.Made);
        var changes = new List<StateChange>();
        foreach (var entry in written.Map.Map("change")?.Entries ?? [])
        {
            if (written.Pack.Scope.FindOf(draft.Aspects, written.On!, entry.Name, entry.Key.Span) is { } aspect
                && entry.Value is YamlScalar { IsNothing: false } text
                && ReadOne(text, aspect, written, draft.Bag) is { } change)
                changes.Add(change);
        }

        return changes;
    }

    private static List<StateChange> Reversed(Operation? step) =>
        [.. from change in step?.Changes ?? []
            where !change.Aspect.IsMark && change.To >= 0
            select new StateChange(change.Aspect, StateSet.Of(change.To), change.From.States().Count() == 1 ? change.From.States().First() : Before)];

    private static StateChange? ReadOne(YamlScalar text, Aspect aspect, OperationDraft written, DiagnosticBag bag)
    {
        var arrow = text.Text.IndexOf(Arrow, StringComparison.Ordinal);
        if (arrow < 0)
        {
            bag.Add(Messages.ChangeForm(text.Span, text.Text));
            return null;
        }

        var froms = Words(text.Text, 0, arrow).ToList();
        var tos = Words(text.Text, arrow + Arrow.Length, text.Text.Length).ToList();
        if (froms.Count == 0 || tos.Count != 1)
        {
            bag.Add(Messages.ChangeForm(text.Span, text.Text));
            return null;
        }

        var from = ReadFrom(froms, text, aspect, bag);
        var to = ReadTo(tos[0], text, aspect, written, bag);
        if (from is null || to is null)
            return null;
        if (to >= 0 && from == StateSet.Of(to.Value))
            bag.Add(Messages.ChangesNothing(text.Span));
        return new StateChange(aspect, from.Value, to.Value);
    }

    private static StateSet? ReadFrom(List<(string Word, int At)> words, YamlScalar text, Aspect aspect, DiagnosticBag bag)
    {
        if (words is [("any", _)] && aspect.IndexOf("any") < 0)
            return new StateSet(0).Complement(aspect);
        var bits = 0UL;
        foreach (var (word, at) in words)
        {
            if (Known(word, at, text, aspect, bag) is not { } state)
                return null;
            bits |= 1UL << state;
        }

        return new StateSet(bits);
    }

    private static int? ReadTo((string Word, int At) word, YamlScalar text, Aspect aspect, OperationDraft written, DiagnosticBag bag)
    {
        if (word.Word != "before" || aspect.IndexOf("before") >= 0)
            return Known(word.Word, word.At, text, aspect, bag);
        if (written.Step is not null)
            return Before;
        bag.Add(Messages.BeforeWithoutStep(text.SpanAt(word.At, word.Word.Length), written.Name.Text));
        return null;
    }

    private static int? Known(string word, int at, YamlScalar text, Aspect aspect, DiagnosticBag bag)
    {
        var state = aspect.IndexOf(word);
        if (state >= 0)
            return state;
        bag.Add(Messages.UnknownState(text.SpanAt(at, word.Length), word, aspect.ToString(), aspect.States));
        return null;
    }

    // Words with '|' or ',' between them, in square brackets or not.
    private static IEnumerable<(string Word, int At)> Words(string text, int start, int end)
    {
        for (var at = start; at < end;)
        {
            if (text[at] is ' ' or '[' or ']' or '|' or ',')
            {
                at++;
                continue;
            }

            var from = at;
            while (at < end && text[at] is not (' ' or '[' or ']' or '|' or ',')) at++;
            yield return (text[from..at], from);
        }
    }
}
