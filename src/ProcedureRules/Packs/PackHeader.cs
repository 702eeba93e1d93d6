namespace ProcedureRules.Packs;

/// <summary>The head of a pack.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version, three numbers.</param>
/// <param name="About">What it covers, one line.</param>
/// <param name="Uses">The packs whose names it may use.</param>
/// <param name="Path">The file it was read from.</param>
public sealed record PackHeader(string Name, string Version, string About, IReadOnlyList<string> Uses, string Path);
