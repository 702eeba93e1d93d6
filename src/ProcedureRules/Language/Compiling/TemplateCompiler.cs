using System.Text;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Checks texts with expressions in braces and makes what renders them.</summary>
internal sealed class TemplateCompiler(CompilerContext context, RuleScope scope)
{
    /// <summary>What stands for a value that nobody can be asked for and that does not follow yet; a text never makes one up.</summary>
    public const string NotKnown = "(not known yet)";

    private delegate string Piece(IBeliefs beliefs, Binding binding, UnitSystem units);

    /// <summary>A text as written in a pack.</summary>
    public Template? Compile(Snippet snippet) =>
        Parser.Template(snippet, context.Bag) is { } template ? Compile(template, snippet, snippet.Text) : null;

    /// <summary>A text made from a parsed piece of a snippet.</summary>
    public Template? Compile(TemplateSyntax template, Snippet snippet, string text)
    {
        var names = new Resolver(context, scope, snippet);
        var pieces = new List<Piece>();
        var nodes = new List<Node>();
        var isWhole = true;
        foreach (var part in template.Parts)
        {
            var piece = part switch
            {
                TemplatePart.Plain plain => (_, _, _) => plain.Text,
                TemplatePart.Hole hole => Render(hole.Expression, names, nodes),
                _ => null,
            };
            if (piece is null) isWhole = false;
            else pieces.Add(piece);
        }

        if (!isWhole) return null;
        if (template.Parts is [TemplatePart.Plain { Text: var constant }]) return new() { Text = text, Lead = constant, Tail = constant, Render = (_, _, _) => constant };
        Piece[] all = [.. pieces];
        var startsWithName = template.Parts is [TemplatePart.Hole { Expression: Expression.Name }, ..];
        var lead = template.Parts is [TemplatePart.Plain first, ..] ? first.Text : "";
        var tail = template.Parts is [.., TemplatePart.Plain last] ? last.Text : "";
        return new() { Text = text, Lead = lead, Tail = tail, Nodes = nodes, Render = (beliefs, binding, units) => Join(all, startsWithName, beliefs, binding, units) };
    }

    /// <summary>What stands for a fact that is not known: which one to ask for, since a text may lack several.</summary>
    public static string NotKnownOf(FactDefinition fact) => fact.IsDerived || fact.IsDemand ? NotKnown : $"({fact.Name.Replace('_', ' ')}: ask)";

    // Words as a technician reads them: "one piece", or the few that are still open.
    private static string Words(FactType type, ulong open, string notKnown)
    {
        if (open == 0 || open == Facts.Value.AllWords(type)) return notKnown;
        return string.Join(" or ", type.Words.Where((_, i) => (open >> i & 1) != 0).Select(word => word.Replace('_', ' ')));
    }

    // A sentence that starts with the name of a part starts with a capital.
    private static string Join(Piece[] pieces, bool startsWithName, IBeliefs beliefs, Binding binding, UnitSystem units)
    {
        var text = new StringBuilder();
        foreach (var piece in pieces) text.Append(piece(beliefs, binding, units));
        if (startsWithName && text.Length > 0) text[0] = char.ToUpperInvariant(text[0]);
        return text.ToString();
    }

    private Piece? Render(Expression expression, Resolver names, List<Node> nodes)
    {
        if (expression is Expression.Name name && scope.Find(name.Text) is { } variable)
            return variable.Sort == Sort.Step ? (_, binding, _) => Instruction(binding.Step(variable.Slot)) : (_, binding, _) => binding.Part(variable.Slot).Text;
        if (expression is Expression.Name { Text: var word } && context.Vocabulary.Kinds.TryGetValue(word, out var kind))
            return (_, _, _) => kind.Text;
        var checkedNode = new ExpressionChecker(names).Check(expression, null);
        if (checkedNode is not null) nodes.Add(checkedNode);
        var notKnown = FactIn(checkedNode) is { } fact ? NotKnownOf(fact) : NotKnown;
        return checkedNode switch
        {
            FactQuantity { Fact.IsDerived: false } node => (beliefs, binding, units) => node.IsKnown(beliefs, binding) ? node.Evaluate(beliefs, binding).ToDisplay(units) : notKnown,
            DemandedQuantity node => (beliefs, binding, units) => node.IsKnown(beliefs, binding) ? Occurring(node.Evaluate(beliefs, binding), node.Fact).ToDisplayWorkedOut(units) : notKnown,
            QuantityNode node => (beliefs, binding, units) => node.IsKnown(beliefs, binding) ? node.Evaluate(beliefs, binding).ToDisplayWorkedOut(units) : notKnown,
            WordsNode node => (beliefs, binding, _) => Words(node.Type, node.Evaluate(beliefs, binding), notKnown),
            TruthNode node => (beliefs, binding, _) => node.Evaluate(beliefs, binding) switch { Truth.Yes => "yes", Truth.No => "no", _ => notKnown },
            TextNode node => (beliefs, binding, _) => node.IsKnown(beliefs, binding) ? node.Evaluate(beliefs, binding).Text! : notKnown,
            _ => null,
        };
    }

    // A demand reckoned from what nobody knows reaches beyond what occurs in the trade: told is what of it can occur.
    private static Quantity Occurring(Quantity demand, FactDefinition fact) =>
        demand.IsBounded && !demand.IsPoint && fact.Plausible is { } range && Quantity.Intersect(demand, range) is { } told ? told : demand;

    private static FactDefinition? FactIn(Node? node) => node switch
    {
        FactQuantity quantity => quantity.Fact,
        FactWords words => words.Fact,
        YesNoTruth { Operand: FactWords words } => words.Fact,
        FactText text => text.Fact,
        _ => null,
    };

    private string Instruction(Step step) => context.Instructions.TryGetValue(step.Operation, out var template)
        ? template.Render(NothingKnown.Beliefs, new([step.Part]), UnitSystem.Us)
        : step.Name;
}
