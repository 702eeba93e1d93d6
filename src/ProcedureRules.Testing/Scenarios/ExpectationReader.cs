using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Scheduling;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads expectations; what cannot be read is complained about and left out.</summary>
internal sealed class ExpectationReader(Situation situation, RuleTexts texts, Workday workday, DiagnosticBag bag)
{
    private const string Not = "no_";
    private readonly NameReader _names = new(situation, bag);

    /// <summary>The expectations of a list.</summary>
    public IReadOnlyList<Expectation> Read(IEnumerable<YamlNode> list) => [.. list.OfType<YamlMapping>().SelectMany(Read)];

    private IEnumerable<Expectation> Read(YamlMapping map)
    {
        if (map.Entries.FirstOrDefault(entry => entry.Name is not ("at" or "is" or "case")) is not { } said) return [];
        if (said.Value is YamlMapping values) return Values(said, values).ToList();
        if (said.Value is not YamlScalar { IsNothing: false } text) return [];
        var at = map.Scalar("at") is { IsNothing: false } step ? _names.Step(step) : null;
        if (map.Has("at") && at is null) return [];
        var isDue = !said.Name.StartsWith(Not, StringComparison.Ordinal);
        var keyword = isDue ? said.Name : said.Name[Not.Length..];
        if (keyword is "labour" or "elapsed") return Time(keyword, text, map) is { } time ? [time] : [];
        return One(keyword, text, at, map.Text("is"), isDue, map.Span, Written(map)) is { } one ? [one] : [];
    }

    private Expectation? One(string keyword, YamlScalar text, StepPick? at, string? verdict, bool isDue, SourceSpan span, string written)
    {
        switch (keyword)
        {
            case "plan":
                return new EndExpected(span, written, text.Text == "stops");
            case "step":
                return _names.Step(text) is { } step ? new StepExpected(span, written, step, isDue, verdict is null ? null : verdict == "sure") : null;
            case "order":
                return Order(text, span, written);
            case "question":
                return _names.Question(text) is { } id ? new QuestionExpected(span, written, id, at, isDue) : null;
            case "finding":
                return _names.Cause(text) is var (cause, part) ? new FindingExpected(span, written, cause.Name, part.Name, verdict, isDue) : null;
            case "conflict":
                return _names.Fact(text) is { } key ? new ConflictExpected(span, written, key.Part.Name, key.Fact) : null;
            default:
                var words = string.Join(' ', text.Text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
                if (!isDue && !texts.CanSay(keyword, words)) bag.Add(Messages.NoSuchWords(text.Span, words, texts.Saying(words)));
                return new WordsExpected(span, written, keyword, words, at, verdict, isDue);
        }
    }

    private OrderExpected? Order(YamlScalar text, SourceSpan span, string written)
    {
        const string Before = " before ";
        var at = text.Text.IndexOf(Before, StringComparison.Ordinal);
        if (at < 0)
        {
            bag.Add(Messages.ExpectedOrderForm(text.Span, text.Text));
            return null;
        }

        var (first, second) = (_names.Step(text, 0, at), _names.Step(text, at + Before.Length, text.Text.Length - at - Before.Length));
        return first is null || second is null ? null : new OrderExpected(span, written, first, second);
    }

    private Expectation? Time(string keyword, YamlScalar text, YamlMapping map)
    {
        if (TimeBounds.Read(text, bag) is not { } due) return null;
        ScheduleCase? only = map.Text("case") switch { "low" => ScheduleCase.Low, "likely" => ScheduleCase.Likely, "high" => ScheduleCase.High, _ => null };
        return keyword == "labour" ? new LabourExpected(map.Span, Written(map), due, only) : new ElapsedExpected(map.Span, Written(map), due, only, workday);
    }

    private IEnumerable<Expectation> Values(YamlEntry said, YamlMapping values)
    {
        foreach (var entry in values.Entries)
        {
            if (entry.Value is not YamlScalar { IsNothing: false } text || _names.Fact(entry.Key) is not { } key) continue;
            var isDemand = said.Name != "value";
            if (isDemand && !key.Fact.Type.IsQuantity)
            {
                bag.Add(Messages.DemandOnWords(entry.Key.Span, entry.Name));
                continue;
            }

            var isUnknown = !isDemand && ValueReader.IsUnknown(text);
            var due = isUnknown ? null : ValueReader.Read(key, text, bag);
            if (isUnknown || due is not null) yield return new ValueExpected(entry.Key.Span, $"{said.Name}: {Written(entry)}", key.Part.Name, key.Fact, said.Name, due);
        }
    }

    private static string Written(YamlMapping map) => string.Join(", ", map.Entries.Select(Written));

    private static string Written(YamlEntry entry) => $"{entry.Name}: {(entry.Value as YamlScalar)?.Text}";
}
