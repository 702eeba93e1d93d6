using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads a vehicle sheet, with its archetype and a work order, into a situation.</summary>
/// <param name="vocabulary">The packs' names.</param>
/// <param name="archetypes">The archetype sheets by name.</param>
internal sealed class SheetReader(Vocabulary vocabulary, IReadOnlyDictionary<string, SourceFile> archetypes)
{
    /// <summary>Reads texts that are at hand.</summary>
    /// <param name="vehicle">The vehicle sheet.</param>
    /// <param name="workOrder">The work order, if there is one.</param>
    /// <param name="bag">Takes what is wrong; what could be read is returned all the same.</param>
    /// <returns>The situation, or null where the vehicle sheet cannot be read at all.</returns>
    public Situation? Read(SourceFile vehicle, SourceFile? workOrder, DiagnosticBag bag)
    {
        var sheet = SheetLayer.Read(vehicle, SheetShapes.Vehicle, Source.Stated, bag);
        var order = workOrder is null ? null : SheetLayer.Read(workOrder, WorkOrderShapes.WorkOrder, Source.Stated, bag);
        if (sheet is null)
            return null;
        return Assemble(order is null ? [sheet] : [sheet, order], bag);
    }

    /// <summary>Puts layers together, the vehicle first; of those behind it, each may ask for jobs.</summary>
    public Situation Assemble(IReadOnlyList<SheetLayer> layers, DiagnosticBag bag)
    {
        var sheet = layers[0];
        var archetype = ReadArchetype(sheet, bag);
        IReadOnlyList<SheetLayer> all = archetype is null ? layers : [archetype, .. layers];
        var builder = new SituationBuilder(vocabulary) { HasGaps = archetype is null && sheet.Root.Has("archetype") };
        foreach (var layer in all)
            new PartsReader(builder, layer, bag).Read();
        builder.AddSilentParts();
        foreach (var layer in all)
            new StatementsReader(builder, layer, bag).Read();
        foreach (var order in layers.Skip(1))
        {
            new JobsReader(builder, order, bag).Read();
            FixedWaysReader.Read(builder, order);
        }

        return builder.Build(sheet.Root.Text("vehicle") ?? "");
    }

    /// <summary>Reads a vehicle sheet, or a work order and the vehicle sheet it names, from disk.</summary>
    /// <param name="path">The file; what it is, its first key says.</param>
    /// <param name="bag">Takes what is wrong.</param>
    /// <param name="sheet">The path of a vehicle sheet that stands in for the one the work order names.</param>
    /// <returns>The situation, or null where there is nothing to read.</returns>
    public Situation? ReadFile(string path, DiagnosticBag bag, string? sheet = null)
    {
        if (SourceFiles.TryLoad(path, bag) is not { } file)
            return null;
        // A trial read tells what the file is; the reading proper tells its mistakes.
        if (YamlReader.Read(file, new DiagnosticBag()) is not YamlMapping root || !FileSorts.IsWorkOrder(root))
            return Read(file, null, bag);
        if (sheet is not null)
            return SourceFiles.TryLoad(sheet, bag) is { } other ? Read(other, file, bag) : null;
        if (root.Scalar("vehicle") is not { IsNothing: false } vehicle)
        {
            SheetLayer.Read(file, WorkOrderShapes.WorkOrder, Source.Stated, bag);
            bag.Add(Messages.VehicleMissing((root.Scalar("work_order") ?? (YamlNode)root).Span));
            return null;
        }

        var found = Path.Combine(Path.GetDirectoryName(path) ?? "", vehicle.Text);
        return SourceFiles.TryLoad(found, bag) is { } named ? Read(named, file, bag) : null;
    }

    private SheetLayer? ReadArchetype(SheetLayer sheet, DiagnosticBag bag)
    {
        if (sheet.Root.Scalar("archetype") is not { IsNothing: false } name)
            return null;
        if (!archetypes.TryGetValue(name.Text, out var file))
        {
            bag.Add(Messages.UnknownArchetype(name.Span, name.Text, archetypes.Keys));
            return null;
        }

        var layer = SheetLayer.Read(file, SheetShapes.Vehicle, Source.Assumed, bag);
        if (layer?.Root.Scalar("archetype") is { } another)
            bag.Add(Messages.ArchetypeOfArchetype(another.Span));
        return layer;
    }
}
