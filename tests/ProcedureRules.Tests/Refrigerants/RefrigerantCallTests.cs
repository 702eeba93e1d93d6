using ProcedureRules.Diagnostics;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Refrigerants;

/// <summary>A call that mixes up refrigerants or pressures is a mistake of the pack, found where it is loaded.</summary>
public class RefrigerantCallTests
{
    [Theory]
    [InlineData("saturation_pressure(r22, 80 degF) > 1 psia", "'r22' is none of the words that are due here")]
    [InlineData("saturation_pressure(r134, 80 degF) > 1 psia", "did you mean 'r134a'?")]
    [InlineData("saturation_pressure(80 degF, r134a) > 1 psia", "'refrigerant' of 'saturation_pressure' is one of the words 'r12', 'r134a' or 'r1234yf', this is a temperature")]
    [InlineData("saturation_temperature(r134a, engine.oil) > 1 degF", "'absolute' of 'saturation_temperature' is an absolute pressure, this is a gauge pressure")]
    [InlineData("saturation_pressure(r134a, dT 80 degF) > 1 psia", "'temperature' of 'saturation_pressure' is a temperature, this is a temperature difference")]
    [InlineData("saturation_gauge(r134a, 80 degF, 0 ft) > 1 psi", "'air' of 'saturation_gauge' is an absolute pressure, this is a length")]
    [InlineData("saturation_gauge(r134a, 80 degF) > 1 psi", "'saturation_gauge' takes 3 arguments, here are 2")]
    [InlineData("r12_to_r134a_charge(5 qt) > 1 lb", "'r12_charge' of 'r12_to_r134a_charge' is a mass, this is a volume")]
    [InlineData("saturation_presure(r134a, 80 degF) > 1 psia", "did you mean 'saturation_pressure'?")]
    [InlineData("saturation_gauge(r134a, 80 degF, 1 atm) > 86 psia", "cannot be compared")]
    public void Compile_AWrongCall_IsComplainedAbout(string condition, string complaint)
    {
        var (_, bag) = Compile(RuleText("", $"\"{condition}\"", "stop: x"), ProcedureEngine.Functions);
        Assert.Contains(complaint, bag.Ordered().First(diagnostic => diagnostic.Severity == Severity.Error).ToLine(), StringComparison.Ordinal);
    }
}
