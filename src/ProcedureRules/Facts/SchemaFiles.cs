using ProcedureRules.Packs;
using ProcedureRules.Shapes;

namespace ProcedureRules.Facts;

/// <summary>The schemas with which editors check and complete the files a person writes.</summary>
internal static class SchemaFiles
{
    /// <summary>File name and text of each schema (JSON Schema draft-07).</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["pack.schema.json"] = SchemaWriter.Write(PackShapes.Pack, "pack.schema.json", "Pack"),
        ["shop.schema.json"] = SchemaWriter.Write(ShopShapes.Shop, "shop.schema.json", "Shop"),
        ["vehicle.schema.json"] = SchemaWriter.Write(SheetShapes.Vehicle, "vehicle.schema.json", "Vehicle sheet"),
        ["work_order.schema.json"] = SchemaWriter.Write(WorkOrderShapes.WorkOrder, "work_order.schema.json", "Work order"),
    };
}
