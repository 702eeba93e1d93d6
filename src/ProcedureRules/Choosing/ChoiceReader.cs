using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;

namespace ProcedureRules.Choosing;

/// <summary>Reads which way of a choice a technician fixes: <c>engine.hold=jack_boss</c>, with the ids that a plan prints.</summary>
internal static class ChoiceReader
{
    /// <summary>A statement as a choice and a way; null after a complaint.</summary>
    public static FixedWay? Read(string text, DiagnosticBag bag)
    {
        var file = new SourceFile("choice", text);
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals >= 0)
            return new FixedWay(text[..equals].Trim(), text[(equals + 1)..].Trim(), file.Span(0, equals), file.Span(equals + 1, text.Length - equals - 1));
        bag.Add(Messages.ChoiceForm(file.Span(0, text.Length), text));
        return null;
    }

    /// <summary>The ways taken; none after a complaint. A choice that comes up for several reasons is made alike wherever it has the way.</summary>
    public static IReadOnlyList<Supposition.Takes> Find(FixedWay fix, BeliefNetwork network, DiagnosticBag bag)
    {
        var book = ChoiceBook.Of(network);
        var keys = book.Keys.Where(key => ChoiceName.Of(key, book.Keys) == fix.Choice).ToList();
        if (keys.Count == 0)
        {
            bag.Add(Messages.UnknownChoice(fix.ChoiceSpan, fix.Choice, Names(book)));
            return [];
        }

        var found = keys.SelectMany(key => book.Options(key)
            .Where(option => ChoiceName.Of(option, book.Options(key)) == fix.Way).Take(1)
            .Select(option => new Supposition.Takes(key, option.Index))).ToList();
        if (found.Count == 0)
            bag.Add(Messages.UnknownWay(fix.WaySpan, fix.Choice, fix.Way, keys.SelectMany(key => book.Options(key).Select(option => ChoiceName.Of(option, book.Options(key)))).Distinct()));
        return found;
    }

    /// <summary>
    /// The same for a way that a work order fixes. What was found out since it was written may have settled the choice, so one that does not
    /// come up and could is no mistake.
    /// </summary>
    public static IReadOnlyList<Supposition.Takes> OfOrder(FixedWay fix, BeliefNetwork network, DiagnosticBag bag)
    {
        var book = ChoiceBook.Of(network);
        if (Names(book).Contains(fix.Choice) || !ChoiceName.MayBe(fix.Choice, network.Result)) return Find(fix, network, bag);
        bag.Add(Messages.ChoiceNotThere(fix.ChoiceSpan, fix.Choice));
        return [];
    }

    private static IEnumerable<string> Names(ChoiceBook book) => book.Keys.Select(key => ChoiceName.Of(key, book.Keys)).Distinct();
}
