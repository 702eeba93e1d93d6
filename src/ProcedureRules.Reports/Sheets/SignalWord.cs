using ProcedureRules.Language;

namespace ProcedureRules.Reports.Sheets;

/// <summary>The signal words of ANSI Z535.6: whoever may be hurt is warned with the safety alert symbol before the word; a notice has none.</summary>
internal static class SignalWord
{
    /// <summary>The word with its symbol as a character.</summary>
    public static string Of(Signal signal) => HasSymbol(signal) ? $"⚠ {Word(signal)}" : Word(signal);

    /// <summary>The word.</summary>
    public static string Word(Signal signal) => signal.ToString().ToUpperInvariant();

    /// <summary>Whether the safety alert symbol goes before it.</summary>
    public static bool HasSymbol(Signal signal) => signal >= Signal.Caution;
}
