using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>A path whose first half is the kind that owns the second.</summary>
internal readonly record struct OwnedPath(Kind Kind, string Name)
{
    /// <summary>Reads a path that defines something of a kind, or null after a complaint.</summary>
    public static OwnedPath? Read(YamlScalar path, PackDocument pack, PackDraft draft)
    {
        // A path of the wrong form has been reported by the check of shapes.
        if (!Forms.PathPattern.Matches(path.Text))
            return null;
        var dot = path.Text.IndexOf('.', StringComparison.Ordinal);
        return pack.Scope.Find(draft.Kinds, path.Text[..dot], path.SpanAt(0, dot)) is { } kind
            ? new OwnedPath(kind, path.Text[(dot + 1)..])
            : null;
    }
}
