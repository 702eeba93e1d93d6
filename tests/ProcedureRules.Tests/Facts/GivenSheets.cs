using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Tests.Packs;

namespace ProcedureRules.Tests.Facts;

/// <summary>Vehicle sheets as texts, for tests.</summary>
internal static class GivenSheets
{
    /// <summary>The names of the base pack.</summary>
    public static readonly Vocabulary Vocabulary = GivenPacks.Read(GivenPacks.Base).Packs.Vocabulary;

    /// <summary>A sheet without mistakes.</summary>
    public const string Van = """
        vehicle: Demo van
        parts:
          starter: starter
          oil_pan: oil_pan
          cover: {kind: dust_cover, text: lower cover}
          left_mount: engine_mount
          right_mount: engine_mount
        relations:
          - covers(cover, oil_pan)
          - not covers(starter, oil_pan)
        facts:
          oil_pan.drop_available: 2 in
          oil_pan.dented: {value: yes, source: measured, note: "seen from below"}
          starter.solenoid: on_starter | remote
        arrival:
          vehicle.height: raised
        """;

    /// <summary>Reads a sheet, with an archetype named <c>front</c> and a work order where given.</summary>
    public static (Situation? Situation, DiagnosticBag Bag) Read(string vehicle, string? order = null, string? archetype = null)
    {
        var bag = new DiagnosticBag();
        var archetypes = new Dictionary<string, SourceFile>();
        if (archetype is not null)
            archetypes["front"] = new SourceFile("front.yaml", archetype);
        var reader = new SheetReader(Vocabulary, archetypes);
        return (reader.Read(new SourceFile("van.yaml", vehicle), order is null ? null : new SourceFile("order.yaml", order), bag), bag);
    }

    /// <summary>What is complained about, as people see it.</summary>
    public static string Complaints(string vehicle, string? order = null, string? archetype = null) =>
        Read(vehicle, order, archetype).Bag.ToSnippets().TrimEnd('\n');
}
