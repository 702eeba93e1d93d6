using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles each row of a decision table to a rule; the rows must leave no gap and not overlap.</summary>
internal sealed class TableCompiler(CompilerContext context, AuthoredRules authored)
{
    public IReadOnlyList<CompiledRule> Compile(TableDeclaration table)
    {
        // The inputs and the output are resolved once in a scope that all rows then share.
        var head = new RuleParts(table.Name, new(table.Pack), table.Span);
        var isWhole = authored.Declare(table.Variables, head.Scope) & authored.Conditions(table.When, head);
        var inputs = table.Inputs.Select(input => Input(input, head.Scope)).ToList();
        isWhole &= !inputs.Contains(null) && Path(table.Output, head.Scope) is not null;
        isWhole = isWhole && authored.AreBound(table.Variables, head) && NoMoments(table, head);
        if (!isWhole) return [];
        TableInput[] selecting = [.. inputs.OfType<TableInput>()];
        var rows = table.Rows.Select((cells, i) => Row(table, head, selecting, cells, i + 1)).ToList();
        if (rows.Contains(null)) return [];
        var coverage = new TableCoverage([.. selecting.Select(input => input.Fact)], [.. rows.Select(row => row!.Value.Cells)]);
        coverage.Report(context.Bag, table.Inputs.Select(input => input.Text).ToList(), table.Span, [.. table.Rows.Select(cells => cells[0].Span.To(cells[^1].Span))]);
        return [.. rows.Select(row => row!.Value.Rule)];
    }

    private TableInput? Input(Snippet snippet, RuleScope scope)
    {
        if (Path(snippet, scope) is not { } found) return null;
        if (!found.Fact.Type.IsText && !found.Fact.IsDemand) return new(found.Part.Slot, found.Fact, snippet);
        context.Bag.Add(Messages.TableInput(snippet.Span, found.Fact.ToString(), found.Fact.IsDemand));
        return null;
    }

    private (Variable Part, FactDefinition Fact)? Path(Snippet snippet, RuleScope scope) =>
        Parser.Path(snippet, context.Bag) is { } path ? new Resolver(context, scope, snippet).Fact(path) : null;

    private bool NoMoments(TableDeclaration table, RuleParts head)
    {
        foreach (var (_, span) in head.Moments) context.Bag.Add(Messages.MomentWithoutStep(span, "set", canHaveMoment: false, table.Span));
        return head.Moments.Count == 0;
    }

    private (CompiledRule Rule, TableCell[] Cells)? Row(TableDeclaration table, RuleParts head, TableInput[] inputs, IReadOnlyList<Snippet> written, int number)
    {
        if (written.Count != inputs.Length + 1) return null; // told when the pack was read
        var rule = head.Fork($"{table.Name}, row {number}", written[0].Span.To(written[^1].Span));
        var cells = new TableCell[inputs.Length];
        var isWhole = true;
        for (var i = 0; i < cells.Length; i++)
        {
            if (new CellCompiler(context, rule).Compile(inputs[i], written[i]) is { } cell) cells[i] = cell;
            else isWhole = false;
        }

        var conclusions = new ConclusionCompiler(context, rule, IfUnknown.Default);
        var set = conclusions.Compile(new() { Keyword = "set", Span = written[^1].Span, Target = table.Output, Text = written[^1] });
        var because = table.Because is { } reason ? conclusions.Terms.Text(reason) : null;
        if (set is null || !isWhole || (table.Because is not null && because is null) || !authored.CanFire(rule)) return null;
        rule.Conclusions.Add(set);
        context.Reads.Add(rule.Reads);
        return (rule.Build(table.Pack, because, table.Basis), cells);
    }
}
