using System.Text;

namespace ProcedureRules.Diagnostics;

/// <summary>Writes the reference's table of codes from the codes themselves.</summary>
internal static class DiagnosticTable
{
    /// <summary>A Markdown table of all codes; lines end with LF.</summary>
    public static string Markdown()
    {
        var table = new StringBuilder("| code | what it means | example | cure |\n|---|---|---|---|\n");
        foreach (var code in DiagnosticCodes.All)
            table.Append($"| {code.Code} | {Cell(code.Title)} | {Lines(code.Example)} | {Cell(code.Cure)} |\n");

        return table.ToString();
    }

    private static string Lines(string example) => string.Join("<br>", example.Split('\n').Select(line => $"`{Cell(line)}`"));

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
