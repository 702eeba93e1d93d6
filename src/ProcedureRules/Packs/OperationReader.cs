using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the operations of all packs. What undoes a step is made after it, since it takes over what it leaves out.</summary>
internal static class OperationReader
{
    /// <summary>Reads them into the draft, in the order of the packs.</summary>
    public static void Read(IReadOnlyList<PackDocument> packs, PackDraft draft)
    {
        var written = new NameTable<OperationDraft>("operation");
        foreach (var pack in packs)
        {
            foreach (var (name, map) in pack.Definitions("operations"))
            {
                var on = map.Scalar("on") is { IsNothing: false } kind ? pack.Scope.Find(draft.Kinds, kind) : null;
                written.Add(name.Text, new OperationDraft(pack, name, map, on), pack.Name, name.Span, draft.Bag);
            }
        }

        UndoLinker.Link(written);
        foreach (var operation in written.Items.OrderBy(operation => operation.Step is not null))
            operation.Made = Make(operation, draft);
        foreach (var operation in written.Items)
            draft.Operations.Add(operation.Name.Text, operation.Made, operation.Pack.Name, operation.Name.Span, draft.Bag);
        foreach (var operation in written.Items.Where(operation => operation is { Made: not null, Step.Made: not null }))
            UndoLinker.Join(operation.Step!.Made!, operation, draft.Bag);
    }

    private static Operation? Make(OperationDraft written, PackDraft draft)
    {
        var (map, scope) = (written.Map, written.Pack.Scope);
        var time = ReadTime(map, draft.Bag);
        var place = map.Scalar("place") is { IsNothing: false } name ? scope.Find(draft.Places, name) : written.Step?.Made?.Place;
        if (!map.Has("place") && written.Step is null)
            draft.Bag.Add(Messages.NoPlace(written.Name.Span, written.Name.Text));
        var changes = written.On is null ? [] : ChangeReader.Read(written, draft);
        var energies = Names(map, "energy", draft.Energies, scope);
        var touches = Names(map, "touches", draft.Kinds, scope);
        var moves = Names(map, "moves", draft.Kinds, scope);
        if (written.On is null || time is null || place is null)
            return null;
        return new Operation
        {
            Name = written.Name.Text,
            On = written.On,
            Text = Snippets.At(map, "text") ?? new Snippet(written.Name.Text),
            Changes = changes,
            Undo = written.Undo?.Name.Text,
            Place = place,
            Time = time.Value,
            Hands = map.Integer("hands") ?? written.Step?.Made?.Hands ?? 1,
            Phase = ReadPhase(written),
            Needs = ReadNeeds(map, draft.Bag),
            Touches = touches,
            Moves = moves,
            MovesIt = map.Scalars("moves").Any(kind => kind.Text == "it"),
            Energies = energies,
            Tools = Snippets.In(map, "tools", draft.Bag),
            Supplies = Snippets.In(map, "supplies", draft.Bag),
            Figures = Snippets.In(map, "figures", draft.Bag),
            Detail = Snippets.In(map, "detail", draft.Bag),
            Because = Snippets.At(map, "because"),
            Basis = map.Text("basis") ?? "",
            Pack = written.Pack.Name,
            Span = written.Name.Span,
        };
    }

    private static List<T> Names<T>(YamlMapping map, string key, NameTable<T> table, Scope scope)
        where T : class =>
        [.. map.Scalars(key).Where(name => name is { IsNothing: false } && !(key == "moves" && name.Text == "it")).Select(name => scope.Find(table, name)).OfType<T>()];

    private static Quantity? ReadTime(YamlMapping map, DiagnosticBag bag)
    {
        if (map.Scalar("time") is not { IsNothing: false } time)
            return null;
        if (!Quantity.TryRead(time.Text, Dimension.Duration, out var value, out var fault))
            bag.Add(Messages.TimeFault(time.SpanAt(fault.Offset, fault.Length), fault.Message, fault.Suggestion));
        else if (!value.IsBounded || value.Low < 0)
            bag.Add(Messages.TimeBounds(time.Span));
        else
            return value;
        return null;
    }

    private static Phase ReadPhase(OperationDraft written) => written.Map.Text("phase") switch
    {
        "prepare" => Phase.Prepare,
        "check" => Phase.Check,
        "apart" => Phase.Apart,
        "back" => Phase.Back,
        "prove" => Phase.Prove,
        null when written.Step is not null => Phase.Back,
        null when written.Map.Has("undo") => Phase.Apart,
        _ => Phase.Work,
    };

    private static List<OperationNeed> ReadNeeds(YamlMapping map, DiagnosticBag bag)
    {
        var needs = new List<OperationNeed>();
        foreach (var need in Snippets.Whole(map.List("needs"), bag))
        {
            if (need is YamlScalar condition)
                needs.Add(new OperationNeed(new Snippet(condition), Way.Both));
            else if (need is YamlMapping both && Snippets.At(both, "state") is { } state)
                needs.Add(new OperationNeed(state, both.Text("way") switch { "off" => Way.Off, "on" => Way.On, _ => Way.Both }));
        }

        return needs;
    }
}
