using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Joins each operation with the one that undoes it.</summary>
internal static class UndoLinker
{
    /// <summary>Links what is written, and reports what cannot be an undoing.</summary>
    public static void Link(NameTable<OperationDraft> written)
    {
        foreach (var step in written.Items)
        {
            if (step.Map.Scalar("undo") is { IsNothing: false } name && step.Pack.Scope.Find(written, name) is { } undo)
                Link(step, undo, name);
        }
    }

    /// <summary>Joins what has been made, and reports an undoing that does not lead back.</summary>
    public static void Join(Operation step, OperationDraft undoing, DiagnosticBag bag)
    {
        var undo = undoing.Made!;
        (undo.Undoes, step.UndoneBy) = (step, undo);
        foreach (var change in step.Changes.Where(change => !change.Aspect.IsMark && change.To >= 0))
        {
            var isBack = undo.Changes.Any(back =>
                ReferenceEquals(back.Aspect, change.Aspect) && back.From.Has(change.To) && (back.To < 0 || change.From.Has(back.To)));
            if (!isBack)
                bag.Add(Messages.UndoDoesNotReturn(undoing.Name.Span, undo.Name, change.Aspect.ToString(), change.Aspect.States[change.To], Words(change)));
        }
    }

    private static void Link(OperationDraft step, OperationDraft undo, YamlScalar name)
    {
        var bag = step.Pack.Scope.Bag;
        if (ReferenceEquals(step, undo))
            bag.Add(Messages.UndoesItself(name.Span, name.Text));
        else if (undo.Step is { } other)
            bag.Add(Messages.UndoesTwo(name.Span, name.Text, other.Name.Text, other.Name.Span));
        else if (undo.Map.Has("undo"))
            bag.Add(Messages.UndoIsUndone(name.Span, name.Text, undo.Name.Span));
        else if (step.On is { } due && undo.On is { } on && !due.IsA(on))
            bag.Add(Messages.UndoOnOtherKind(name.Span, name.Text, on.Name, due.Name, undo.Name.Span));
        else
            (step.Undo, undo.Step) = (undo, step);
    }

    private static string Words(StateChange change) => string.Join(" | ", change.From.States().Select(state => change.Aspect.States[state]));
}
