using ProcedureRules.Quantities;
using UnitsNet;
using Xunit;
using static ProcedureRules.Quantities.Dimension;
using Dim = ProcedureRules.Quantities.Dimension;
using Quantity = ProcedureRules.Quantities.Quantity;

namespace ProcedureRules.Tests.Quantities;

public class DimensionRulesTests
{
    private static readonly Dictionary<Dim, BaseDimensions> Si = new()
    {
        [Number] = BaseDimensions.Dimensionless,
        [Count] = BaseDimensions.Dimensionless,
        [Dim.Angle] = BaseDimensions.Dimensionless,
        [Dim.Length] = UnitsNet.Length.BaseDimensions,
        [Dim.Area] = UnitsNet.Area.BaseDimensions,
        [Dim.Volume] = UnitsNet.Volume.BaseDimensions,
        [Dim.Mass] = UnitsNet.Mass.BaseDimensions,
        [Dim.Force] = UnitsNet.Force.BaseDimensions,
        [Dim.Torque] = UnitsNet.Torque.BaseDimensions,
        [Dim.Energy] = UnitsNet.Energy.BaseDimensions,
        [Dim.Power] = UnitsNet.Power.BaseDimensions,
        [GaugePressure] = Pressure.BaseDimensions,
        [AbsolutePressure] = Pressure.BaseDimensions,
        [PressureDifference] = Pressure.BaseDimensions,
        [Dim.Temperature] = UnitsNet.Temperature.BaseDimensions,
        [TemperatureDifference] = UnitsNet.Temperature.BaseDimensions,
        [Dim.Duration] = UnitsNet.Duration.BaseDimensions,
        [Voltage] = ElectricPotential.BaseDimensions,
        [Current] = ElectricCurrent.BaseDimensions,
        [Resistance] = ElectricResistance.BaseDimensions,
        [Dim.ElectricCharge] = UnitsNet.ElectricCharge.BaseDimensions,
        [SpeedOfRotation] = RotationalSpeed.BaseDimensions,
        [Dim.Speed] = UnitsNet.Speed.BaseDimensions,
        [MassRate] = MassFlow.BaseDimensions,
        [VolumeRate] = VolumeFlow.BaseDimensions,
        [Dim.Density] = UnitsNet.Density.BaseDimensions,
    };

    public static TheoryData<Dim, Dim> Pairs
    {
        get
        {
            var pairs = new TheoryData<Dim, Dim>();
            foreach (var a in Dimensions.All)
                foreach (var b in Dimensions.All)
                    pairs.Add(a, b);
            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Results_OfEveryPair_HaveTheSiDimensionsThatUnitsNetGives(Dim a, Dim b)
    {
        if (DimensionRules.Multiply(a, b) is { } product) Assert.Equal(Si[a].Multiply(Si[b]), Si[product]);
        if (DimensionRules.Divide(a, b) is { } quotient) Assert.Equal(Si[a].Divide(Si[b]), Si[quotient]);
        if (DimensionRules.Add(a, b) is { } sum) Assert.Equal((Si[a], Si[b]), (Si[sum], Si[sum]));
        if (DimensionRules.Subtract(a, b) is { } difference) Assert.Equal((Si[a], Si[b]), (Si[difference], Si[difference]));
        if (DimensionRules.Common(a, b) is { } common) Assert.Equal((Si[a], Si[b]), (Si[common], Si[common]));
        Assert.Equal(DimensionRules.Multiply(a, b), DimensionRules.Multiply(b, a));
        Assert.Equal(DimensionRules.Add(a, b), DimensionRules.Add(b, a));
        Assert.Equal(DimensionRules.AreComparable(a, b), DimensionRules.AreComparable(b, a));
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Subtract_WhatWasAdded_GivesBackTheDimension(Dim a, Dim b)
    {
        if (DimensionRules.Add(a, b) is { } sum && a != Count && b != Count)
            Assert.Equal(a, DimensionRules.Subtract(sum, b));
    }

    [Theory]
    [InlineData("+", GaugePressure, AbsolutePressure)]
    [InlineData("+", GaugePressure, GaugePressure)]
    [InlineData("+", Dim.Temperature, Dim.Temperature)]
    [InlineData("+", Dim.Torque, Dim.Energy)]
    [InlineData("+", Dim.Length, Number)]
    [InlineData("-", GaugePressure, AbsolutePressure)]
    [InlineData("-", TemperatureDifference, Dim.Temperature)]
    [InlineData("-", PressureDifference, GaugePressure)]
    [InlineData("*", Dim.Temperature, Number)]
    [InlineData("/", Dim.Temperature, Dim.Temperature)]
    [InlineData("/", Number, Dim.Length)]
    [InlineData("compare", Dim.Torque, Dim.Energy)]
    [InlineData("compare", GaugePressure, AbsolutePressure)]
    [InlineData("compare", GaugePressure, PressureDifference)]
    [InlineData("compare", Dim.Temperature, TemperatureDifference)]
    [InlineData("compare", Dim.Length, Number)]
    public void Results_OfKindsThatDoNotMix_AreNoneAndSayWhy(string operation, Dim a, Dim b)
    {
        Assert.Null(operation switch
        {
            "+" => DimensionRules.Add(a, b),
            "-" => DimensionRules.Subtract(a, b),
            "*" => DimensionRules.Multiply(a, b),
            "/" => DimensionRules.Divide(a, b),
            _ => DimensionRules.Common(a, b),
        });
        var sentence = DimensionRules.WhyNot(operation, a, b);
        Assert.Contains(Dimensions.Phrase(a), sentence, StringComparison.Ordinal);
        Assert.Contains(Dimensions.Phrase(b), sentence, StringComparison.Ordinal);
        Assert.Contains("cannot be", sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Dim.Force, Dim.Length, Dim.Torque)]
    [InlineData(Dim.Torque, Dim.Angle, Dim.Energy)]
    [InlineData(Dim.Length, Dim.Length, Dim.Area)]
    [InlineData(GaugePressure, Dim.Area, Dim.Force)]
    [InlineData(Number, GaugePressure, GaugePressure)]
    [InlineData(Count, Dim.Duration, Dim.Duration)]
    public void Multiply_OfKindsThatGoTogether_GivesTheKindTheTradeMeans(Dim a, Dim b, Dim product) =>
        Assert.Equal(product, DimensionRules.Multiply(a, b));

    [Theory]
    [InlineData("5 psi", PressureDifference, QuantityFaultKind.WrongDimension, "dP 5 psi")]
    [InlineData("20 degF", TemperatureDifference, QuantityFaultKind.WrongDimension, "dT 20 degF")]
    [InlineData("14.7 psi", AbsolutePressure, QuantityFaultKind.WrongDimension, null)]
    [InlineData("5 J", Dim.Torque, QuantityFaultKind.WrongDimension, null)]
    [InlineData("45", Dim.Length, QuantityFaultKind.MissingUnit, null)]
    [InlineData("45 pis", GaugePressure, QuantityFaultKind.UnknownUnit, "psi")]
    public void TryRead_WhereAnotherKindIsDue_SaysSo(string text, Dim due, QuantityFaultKind kind, string? suggestion)
    {
        Assert.False(Quantity.TryRead(text, due, out _, out var fault));
        Assert.Equal((kind, suggestion), (fault.Kind, fault.Suggestion));
    }

    [Fact]
    public void TryRead_WhereACountIsDue_TakesANumber()
    {
        Assert.True(Quantity.TryRead("3", Count, out var value, out _));
        Assert.Equal(Quantity.Point(3, Count), value);
    }

    [Fact]
    public void Read_AMistake_SaysWhatAndWhatWasMeant()
    {
        var error = Assert.Throws<FormatException>(() => Quantity.Read("45 pis"));
        Assert.Equal("'45 pis': 'pis' is not a unit here; did you mean psi?", error.Message);
    }

    [Fact]
    public void Names_OfEveryDimension_ReadBackAndAreDistinct()
    {
        Assert.Equal(Dimensions.All.Count, Dimensions.All.Select(Dimensions.Name).Distinct().Count());
        Assert.All(Dimensions.All, dimension =>
        {
            Assert.True(Dimensions.TryParse(Dimensions.Name(dimension), out var back));
            Assert.Equal(dimension, back);
            Assert.Contains(Dimensions.Name(dimension).Replace('_', ' '), Dimensions.Phrase(dimension), StringComparison.Ordinal);
        });
        Assert.False(Dimensions.TryParse("Length", out _));
    }
}
