using System.Text.RegularExpressions;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>Wordings that several parts of a plan share.</summary>
internal static partial class Words
{
    /// <summary>The instruction of a step.</summary>
    public static string Instruction(BeliefState beliefs, Step step, UnitSystem units) =>
        beliefs.Network.Result.Rules.Instructions.TryGetValue(step.Operation, out var template)
            ? template.Render(beliefs, new Binding([step.Part]), units)
            : $"{Name(step.Operation.Name)} the {step.Part.Text}";

    /// <summary>The instruction of a step.</summary>
    public static Wording Instruction(BeliefState beliefs, Step step) => new(units => Instruction(beliefs, step, units));

    /// <summary>A name as words.</summary>
    public static string Name(string name) => name.Replace('_', ' ');

    /// <summary>A state in words: <c>engine height raised</c>, and <c>flywheel faced</c> where the aspect has its name from the state.</summary>
    public static string State(GroundState state) => state.Aspect.States.Contains(state.Aspect.Name)
        ? $"{state.Part.Text} {States(state.Aspect, state.States)}"
        : $"{state.Part.Text} {Name(state.Aspect.Name)} {States(state.Aspect, state.States)}";

    private static string States(Aspect aspect, StateSet states) => string.Join(" or ", states.States().Select(i => Name(aspect.States[i])));

    /// <summary>What a choice is about.</summary>
    public static string Choice(ChoiceKey key) => key switch
    {
        ChoiceKey.OfRule rule => rule.Rule.Title,
        ChoiceKey.OfWays ways => $"{ways.Part.Text}, {Name(ways.Aspect.Name)}: {States(ways.Aspect, ways.States)}",
        _ => "",
    };

    /// <summary>A relation in words.</summary>
    public static string Relation(Relation relation, Part a, Part b) => relation.Text
        .Replace("{a}", $"the {a.Text}", StringComparison.Ordinal).Replace("{b}", $"the {b.Text}", StringComparison.Ordinal);

    /// <summary>What contradicts itself, and how: <c>fan.thread: left hand nut against right hand nut</c>.</summary>
    public static Wording Conflict(Conflict conflict) => new(units => $"{conflict.About.Id}: {string.Join(" against ", conflict.Values.Select(value => value.In(units)))}");


    /// <summary>A condition of a rule with its parts in a technician's words.</summary>
    public static string Condition(Record record, Test test)
    {
        var text = Identifier().Replace(test.Text, match =>
        {
            var variable = record.Rule?.Variables.FirstOrDefault(variable => variable.Name == match.Value && variable.Sort == Sort.Part);
            return variable is null ? match.Value : record.Binding.Part(variable.Slot).Text;
        });
        text = Any().Replace(text, match => $"there is {Article(match)} {match.Groups["kind"].Value}");
        foreach (var (sign, words) in Comparisons) text = text.Replace(sign, words, StringComparison.Ordinal);
        return Name(Dot().Replace(Demanded().Replace(text, "the $1 demanded"), " "));
    }

    private static string Article(Match any) =>
        any.Groups["not"].Success ? "no" : "aeiou".Contains(any.Groups["kind"].Value[0]) ? "an" : "a";

    private static readonly (string Sign, string Words)[] Comparisons =
        [(" <= ", " is at most "), (" >= ", " is at least "), (" < ", " is less than "), (" > ", " is more than "), ("is_not", "is not")];

    [GeneratedRegex(@"\b(?<not>not )?any\((?<kind>\w+)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Any();

    [GeneratedRegex(@"demanded\(([^()]*)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Demanded();

    [GeneratedRegex(@"(?<![\w.])[a-z][a-z0-9_]*", RegexOptions.CultureInvariant)]
    private static partial Regex Identifier();

    [GeneratedRegex(@"(?<=[a-z_)])\.(?=[a-z])", RegexOptions.CultureInvariant)]
    private static partial Regex Dot();
}
