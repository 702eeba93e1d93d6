using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Scheduling;

/// <summary>Reads a shop file.</summary>
internal sealed class WorkshopReader(Vocabulary vocabulary, DiagnosticBag bag)
{
    /// <summary>Reads a text that is at hand; null where it cannot be read at all.</summary>
    public Workshop? Read(SourceFile file)
    {
        if (YamlReader.Read(file, bag) is not { } node || !FileSorts.MayBe(node, ShopShapes.Shop.Fields[0].Name, bag)) return null;
        ShapeChecker.Check(node, ShopShapes.Shop, bag);
        return node is YamlMapping root ? Read(root) : null;
    }

    /// <summary>Reads a shop whose shape has been checked.</summary>
    public Workshop Read(YamlMapping root) => Workshop.Usual with
    {
        Title = root.Text("shop") ?? "",
        Technicians = Math.Clamp(root.Integer("technicians") ?? 1, 1, Workshop.MostTechnicians),
        Hours = Hours(root),
        Places = Places(root),
        Alone = root.Has("alone") ? Alone(root) : null,
    };

    private OpeningHours Hours(YamlMapping root)
    {
        var closed = Closed(root);
        if (root.Map("hours") is not { } hours) return closed.Count == 0 ? OpeningHours.Usual : OpeningHours.Usual.Without(closed);
        var days = new Dictionary<DayOfWeek, IReadOnlyList<OpenPeriod>>();
        foreach (var entry in hours.Entries)
        {
            var day = ShopShapes.Days.ToList().IndexOf(entry.Name);
            if (day < 0) continue;
            var written = entry.Value is YamlScalar one ? [one] : hours.Scalars(entry.Name);
            var periods = written.Select(Period).OfType<OpenPeriod>().ToList();
            if (OpeningHours.AreInOrder(periods)) days[(DayOfWeek)day] = periods;
            else bag.Add(Messages.HoursOutOfOrder(entry.Value.Span, entry.Name));
        }
        if (days.Values.Any(periods => periods.Count > 0)) return new OpeningHours(days, closed);
        if (!bag.HasErrors) bag.Add(Messages.NeverOpen(hours.Span));
        return OpeningHours.Usual;
    }

    private static OpenPeriod? Period(YamlScalar written)
    {
        var times = written.Text.Split('-', StringSplitOptions.TrimEntries);
        return times.Length == 2 && Minutes(times[0]) is { } from && Minutes(times[1]) is { } to ? new OpenPeriod(from, to) : null;
    }

    private static int? Minutes(string time) =>
        time.Split(':') is [var hours, var minutes] && int.TryParse(hours, NumberStyles.None, CultureInfo.InvariantCulture, out var h)
            && int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var m) ? (h * 60) + m : null;

    private List<DateOnly> Closed(YamlMapping root)
    {
        var closed = new List<DateOnly>();
        foreach (var written in root.Scalars("closed"))
        {
            if (DateOnly.TryParseExact(written.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) closed.Add(date);
            else if (!bag.HasErrors) bag.Add(Messages.NoSuchDay(written.Span, written.Text));
        }
        return closed;
    }

    private Dictionary<string, int> Places(YamlMapping root)
    {
        var places = new Dictionary<string, int>();
        foreach (var entry in root.Map("places")?.Entries ?? [])
        {
            if (!vocabulary.Places.Contains(entry.Name)) bag.Add(Messages.UnknownOfShop(entry.Key.Span, "place", entry.Name, vocabulary.Places));
            else if (entry.Value is YamlScalar people && people.AsInteger() is { } count) places[entry.Name] = Math.Max(1, count);
        }
        return places;
    }

    private HashSet<string> Alone(YamlMapping root)
    {
        var alone = new HashSet<string>();
        foreach (var written in root.Scalars("alone"))
        {
            if (vocabulary.Energies.Contains(written.Text)) alone.Add(written.Text);
            else bag.Add(Messages.UnknownOfShop(written.Span, "energy", written.Text, vocabulary.Energies));
        }
        return alone;
    }
}
