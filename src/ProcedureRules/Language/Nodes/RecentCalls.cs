using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>
/// What a function gave lately. Planning asks the same of it again under one set of choices after the other, and it depends on nothing but its
/// arguments. Safe on many threads: a call that another thread overwrites is made again.
/// </summary>
internal sealed class RecentCalls
{
    private const int Most = 16;

    private readonly Call?[] _calls = new Call?[Most];

    /// <summary>What it gave for these arguments; null where that is not remembered.</summary>
    public Quantity? Of(Quantity[] quantities, string[] words) =>
        _calls[SlotOf(quantities, words)] is { } call && call.Quantities.AsSpan().SequenceEqual(quantities) && call.Words.AsSpan().SequenceEqual(words) ? call.Result : null;

    /// <summary>Remembers a call; the arguments are not changed later.</summary>
    public void Add(Quantity[] quantities, string[] words, Quantity result) => _calls[SlotOf(quantities, words)] = new Call(quantities, words, result);

    private static int SlotOf(Quantity[] quantities, string[] words)
    {
        var hash = default(HashCode);
        foreach (var quantity in quantities) hash.Add(quantity);
        foreach (var word in words) hash.Add(word);
        return (hash.ToHashCode() & int.MaxValue) % Most;
    }

    private sealed record Call(Quantity[] Quantities, string[] Words, Quantity Result);
}
