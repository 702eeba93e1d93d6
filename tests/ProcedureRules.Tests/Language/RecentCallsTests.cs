using ProcedureRules.Language.Nodes;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Language;

/// <summary>What a function gave is given again for the same arguments, and for no others.</summary>
public sealed class RecentCallsTests
{
    [Fact]
    public void Of_WhatWasAddedLast_IsItsResult()
    {
        var calls = new RecentCalls();
        calls.Add([Inches(1), Inches(2)], ["straight"], Inches(3));

        Assert.Equal(Inches(3), calls.Of([Inches(1), Inches(2)], ["straight"]));
    }

    [Fact]
    public void Of_OtherFiguresOrderOrWords_IsNothing()
    {
        var calls = new RecentCalls();
        calls.Add([Inches(1), Inches(2)], ["straight"], Inches(3));

        Assert.Null(calls.Of([Inches(2), Inches(1)], ["straight"]));
        Assert.Null(calls.Of([Inches(1), Inches(2)], ["at_the_front"]));
        Assert.Null(calls.Of([Quantity.Between(1, 2, Dimension.Length), Inches(2)], ["straight"]));
    }

    // Far more calls than are remembered: one overwrites another, and none is taken for another.
    [Fact]
    public void Of_ManyCalls_IsTheirOwnResultOrNothing()
    {
        var (calls, found) = (new RecentCalls(), 0);
        for (var i = 0; i < 500; i++) calls.Add([Inches(i)], [], Inches(2 * i));
        for (var i = 0; i < 500; i++)
            if (calls.Of([Inches(i)], []) is { } result)
            {
                found++;
                Assert.Equal(Inches(2 * i), result);
            }

        Assert.InRange(found, 1, 16);
    }

    private static Quantity Inches(double length) => Quantity.Point(length, Dimension.Length);
}
