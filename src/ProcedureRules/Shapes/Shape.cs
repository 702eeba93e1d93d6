namespace ProcedureRules.Shapes;

/// <summary>What a value of a YAML file has to look like.</summary>
/// <remarks>
/// Shapes are data. The structural check, the JSON Schema that editors use and the tables of the language reference all
/// come from the same shapes, so they cannot drift apart.
/// </remarks>
internal abstract class Shape
{
    /// <summary>What the value means, in one line; goes to the schema and the reference.</summary>
    public string Documentation { get; init; } = "";
}
