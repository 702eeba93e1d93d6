using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>A text of a plan that is rendered in the reader's units.</summary>
public sealed class Wording
{
    private readonly Func<UnitSystem, string> _render;
    private readonly string _lead = "";
    private readonly string _tail = "";
    private string? _us;
    private string? _si;

    /// <summary>A template under a binding and the plan's beliefs.</summary>
    public Wording(Template template, IBeliefs beliefs, Binding binding)
    {
        ArgumentNullException.ThrowIfNull(template);
        (_lead, _tail) = (template.Lead, template.Tail);
        _render = units => template.Render(beliefs, binding, units);
    }

    /// <summary>A text without expressions.</summary>
    public Wording(string text) => (_render, _lead, _tail) = (_ => text, text, text);

    /// <summary>A text made from the units.</summary>
    public Wording(Func<UnitSystem, string> render) => _render = render;

    /// <summary>The text; rendered when it is first asked for.</summary>
    public string In(UnitSystem units) => units == UnitSystem.Us ? _us ??= _render(units) : _si ??= _render(units);

    /// <inheritdoc/>
    public override string ToString() => In(UnitSystem.Us);

    /// <summary>Whether both read the same; rendered only where they start and end alike.</summary>
    internal bool IsSame(Wording other) =>
        (_lead.StartsWith(other._lead, StringComparison.Ordinal) || other._lead.StartsWith(_lead, StringComparison.Ordinal))
        && (_tail.EndsWith(other._tail, StringComparison.Ordinal) || other._tail.EndsWith(_tail, StringComparison.Ordinal))
        && ToString() == other.ToString();
}
