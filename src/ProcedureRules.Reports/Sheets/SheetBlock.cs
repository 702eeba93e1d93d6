using ProcedureRules.Language;

namespace ProcedureRules.Reports.Sheets;

/// <summary>One piece of a work sheet, whatever it is printed as.</summary>
internal abstract record SheetBlock
{
    private SheetBlock() { }

    /// <summary>A heading over what follows.</summary>
    public sealed record Heading(string Text) : SheetBlock;

    /// <summary>Where the next steps are done.</summary>
    public sealed record Place(string Text) : SheetBlock;

    /// <summary>A caution with its signal word.</summary>
    public sealed record Caution(Signal Signal, string Text) : SheetBlock;

    /// <summary>Something at which the work halts: a stop, a hold, a wait.</summary>
    public sealed record Halt(string Word, string Text) : SheetBlock;

    /// <summary>What a step hangs on.</summary>
    public sealed record Condition(string Text) : SheetBlock;

    /// <summary>Something to find out and write down.</summary>
    /// <param name="Text">The question, or what to measure with its limits.</param>
    /// <param name="Notes">How to find out, what is assumed, what hangs on it.</param>
    public sealed record Blank(string Text, IReadOnlyList<string> Notes) : SheetBlock;

    /// <summary>Something to tick off.</summary>
    public sealed record Tick(string Text) : SheetBlock;

    /// <summary>A line of text.</summary>
    public sealed record Line(string Text) : SheetBlock;

    /// <summary>Small print.</summary>
    public sealed record Note(string Text) : SheetBlock;

    /// <summary>A step to tick off.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Text">The instruction.</param>
    /// <param name="Effort">Hands and time.</param>
    /// <param name="Before">What is read before it: waits, holds, cautions, the condition it hangs on.</param>
    /// <param name="After">Its details, checks and what it finds out.</param>
    public sealed record Step(int Number, string Text, string Effort, IReadOnlyList<SheetBlock> Before, IReadOnlyList<SheetBlock> After) : SheetBlock;
}
