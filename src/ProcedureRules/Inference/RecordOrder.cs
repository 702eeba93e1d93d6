using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>
/// The order of records in a result: by mechanism, rule and names, so that it is the same whatever the order of the sheet or of the
/// updates that led there.
/// </summary>
internal sealed class RecordOrder(RuleIndex index) : IComparer<Record>
{
    /// <inheritdoc/>
    public int Compare(Record? x, Record? y)
    {
        var (a, b) = (x!, y!);
        var order = a.Mechanism - b.Mechanism;
        if (order == 0 && a.Rule is not null && !ReferenceEquals(a.Rule, b.Rule)) order = index.OrdinalOf(a.Rule) - index.OrdinalOf(b.Rule!);
        if (order == 0) order = Compare(a.Binding, b.Binding);
        for (var i = 0; order == 0 && i < Math.Min(a.Premises.Count, b.Premises.Count); i++)
            order = Compare(a.Premises[i], b.Premises[i]);
        for (var i = 0; order == 0 && i < Math.Min(a.Effects.Count, b.Effects.Count); i++)
            if (a.Effects[i].Atom is { } left && b.Effects[i].Atom is { } right) order = Compare(left, right);
        return order;
    }

    private static int Compare(Binding a, Binding b)
    {
        var order = a.Count - b.Count;
        for (var i = 0; order == 0 && i < a.Count; i++) order = CompareItems(a[i], b[i]);
        return order;
    }

    private static int CompareItems(object a, object b) => (a, b) switch
    {
        (Part left, Part right) => Compare(left, right),
        (Step left, Step right) => Compare(left, right),
        _ => (a is Step).CompareTo(b is Step),
    };

    private int Compare(Atom a, Atom b) => (a, b) switch
    {
        (Atom.Exists left, Atom.Exists right) => Compare(left.Part, right.Part),
        (Atom.Related left, Atom.Related right) => First(
            string.CompareOrdinal(left.Relation.Name, right.Relation.Name), Compare(left.A, right.A), Compare(left.B, right.B)),
        (Atom.Asked left, Atom.Asked right) => First(
            string.CompareOrdinal(left.Request.Job.Name, right.Request.Job.Name), Compare(left.Request.On, right.Request.On)),
        (Atom.Occurs left, Atom.Occurs right) => Compare(left.Step, right.Step),
        (Atom.Wanted left, Atom.Wanted right) => Compare(
            left.Part, left.Aspect, left.States, right.Part, right.Aspect, right.States),
        (Atom.Open left, Atom.Open right) => Compare(left.Choice, right.Choice),
        (Atom.Chosen left, Atom.Chosen right) => First(Compare(left.Choice, right.Choice), left.Option - right.Option),
        _ => string.CompareOrdinal(a.GetType().Name, b.GetType().Name),
    };

    private int Compare(ChoiceKey a, ChoiceKey b) => (a, b) switch
    {
        (ChoiceKey.OfRule left, ChoiceKey.OfRule right) => First(
            index.OrdinalOf(left.Rule) - index.OrdinalOf(right.Rule),
            Compare(left.Binding, right.Binding),
            left.Conclusion - right.Conclusion),
        (ChoiceKey.OfWays left, ChoiceKey.OfWays right) => Compare(
            left.Part, left.Aspect, left.States, right.Part, right.Aspect, right.States),
        _ => (a is ChoiceKey.OfWays).CompareTo(b is ChoiceKey.OfWays),
    };

    private static int Compare(Part a, Aspect aspect, StateSet states, Part b, Aspect other, StateSet others) =>
        First(Compare(a, b), string.CompareOrdinal(aspect.Name, other.Name), states.Bits.CompareTo(others.Bits));

    private static int Compare(Step a, Step b) => ReferenceEquals(a, b)
        ? 0
        : First(string.CompareOrdinal(a.Operation.Name, b.Operation.Name), Compare(a.Part, b.Part));

    private static int Compare(Part a, Part b) => ReferenceEquals(a, b) ? 0 : string.CompareOrdinal(a.Name, b.Name);

    private static int First(int first, int second, int third = 0) => first != 0 ? first : second != 0 ? second : third;
}
