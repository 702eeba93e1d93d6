using System.Text;

namespace ProcedureRules.Tests.Docs;

/// <summary>Puts pieces of a pack together: what stands under the same key is joined.</summary>
internal static class PackFragments
{
    public static string Join(IEnumerable<string> fragments)
    {
        var sections = new Dictionary<string, StringBuilder>(StringComparer.Ordinal);
        foreach (var fragment in fragments)
        {
            StringBuilder? section = null;
            foreach (var line in fragment.Split('\n'))
            {
                if (line.Length > 0 && char.IsAsciiLetterLower(line[0]))
                {
                    var key = line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)];
                    if (!sections.TryGetValue(key, out section)) sections[key] = section = new StringBuilder();
                    section.Append(line.AsSpan(key.Length)).Append('\n');
                }
                else if (line.Length > 0 && line[0] != '#')
                {
                    section!.Append(line).Append('\n');
                }
            }
        }

        return string.Concat(sections.Select(section => section.Key + section.Value));
    }
}
