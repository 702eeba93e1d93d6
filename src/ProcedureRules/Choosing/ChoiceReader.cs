using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Choosing;

/// <summary>Reads which way of a choice a technician fixes: <c>engine.hold=jack_boss</c>, with the ids that a plan prints.</summary>
internal static class ChoiceReader
{
    /// <summary>The ways taken; none after a complaint. A choice that comes up for several reasons is made alike wherever it has the way.</summary>
    public static IReadOnlyList<Supposition> Read(string text, BeliefNetwork network, DiagnosticBag bag)
    {
        var file = new SourceFile("choice", text);
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            bag.Add(Messages.ChoiceForm(file.Span(0, text.Length), text));
            return [];
        }

        var book = new ChoiceBook(network);
        var (choice, way) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        var keys = book.Keys.Where(key => ChoiceName.Of(key, book.Keys) == choice).ToList();
        if (keys.Count == 0)
        {
            bag.Add(Messages.UnknownChoice(file.Span(0, equals), choice, book.Keys.Select(key => ChoiceName.Of(key, book.Keys)).Distinct()));
            return [];
        }

        var found = keys.SelectMany(key => book.Options(key)
            .Where(option => ChoiceName.Of(option, book.Options(key)) == way).Take(1)
            .Select(option => new Supposition.Takes(key, option.Index))).ToList();
        if (found.Count == 0)
            bag.Add(Messages.UnknownWay(file.Span(equals + 1, text.Length - equals - 1), choice, way, keys.SelectMany(key => book.Options(key).Select(option => ChoiceName.Of(option, book.Options(key)))).Distinct()));
        return found;
    }
}
