using System.Text;

namespace ProcedureRules.Reports.Sheets;

/// <summary>Prints a work sheet as Markdown. A signal word leads a quoted block before its step, so that it also stands out where nothing renders it.</summary>
internal sealed class MarkdownSheet
{
    private const string Rule = @"\_\_\_\_\_\_\_\_\_\_\_\_";

    private readonly StringBuilder _text = new();
    private bool _isInList;

    public static string Write(WorkSheet sheet)
    {
        var writer = new MarkdownSheet();
        writer.Paragraph($"# {MarkdownText.Escape(sheet.Title)}");
        writer.Paragraph($"**{MarkdownText.Escape(sheet.Vehicle)}**");
        writer.Paragraph(string.Join(" ", sheet.Fields.Select(field => $"{field}: {Rule}")));
        foreach (var block in sheet.Blocks) writer.Write(block, "");
        writer.EndList();
        return writer._text.ToString();
    }

    private void Write(SheetBlock block, string indent)
    {
        switch (block)
        {
            case SheetBlock.Heading heading:
                Paragraph($"## {MarkdownText.Escape(heading.Text)}");
                break;
            case SheetBlock.Place place:
                Paragraph($"*Place: {MarkdownText.Escape(place.Text)}*");
                break;
            case SheetBlock.Caution caution:
                Paragraph($"> **{SignalWord.Of(caution.Signal)}** {MarkdownText.Escape(caution.Text)}");
                break;
            case SheetBlock.Halt halt:
                Paragraph($"> **{halt.Word}** {MarkdownText.Escape(halt.Text)}");
                break;
            case SheetBlock.Condition condition:
                Paragraph($"> **{MarkdownText.Escape(condition.Text)}**");
                break;
            case SheetBlock.Blank blank:
                Item($"{indent}- [ ] {MarkdownText.Escape(blank.Text)} {Rule}");
                foreach (var note in blank.Notes) Item($"{indent}  - *{MarkdownText.Escape(note)}*");
                break;
            case SheetBlock.Tick tick:
                Item($"{indent}- [ ] {MarkdownText.Escape(tick.Text)}");
                break;
            case SheetBlock.Line line:
                Item($"{indent}- {MarkdownText.Escape(line.Text)}");
                break;
            case SheetBlock.Note note when indent.Length > 0:
                Item($"{indent}- *{MarkdownText.Escape(note.Text)}*");
                break;
            case SheetBlock.Note note:
                Paragraph($"*{MarkdownText.Escape(note.Text)}*");
                break;
            case SheetBlock.Step step:
                foreach (var before in step.Before) Write(before, "");
                Item($"- [ ] **{step.Number}. {MarkdownText.Escape(step.Text)}** ({MarkdownText.Escape(step.Effort)})");
                foreach (var after in step.After) Write(after, indent + "  ");
                break;
        }
    }

    private void Paragraph(string text)
    {
        EndList();
        _text.Append(text).Append("\n\n");
    }

    private void Item(string text)
    {
        _isInList = true;
        _text.Append(text).Append('\n');
    }

    private void EndList()
    {
        if (_isInList) _text.Append('\n');
        _isInList = false;
    }
}
