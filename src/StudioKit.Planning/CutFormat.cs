using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Lengths as they are marked and cut: to the half millimetre, or the thirty-second of an inch.</summary>
public static class CutFormat
{
    /// <summary>A length to the half millimetre or the thirty-second of an inch, as it is marked and cut.</summary>
    public static string CutLength(Length length) => UnitText.OfLength(length, $"{CutMillimetres(length)} mm", InchText.ByRule);

    /// <summary>The same without the unit that heads its column.</summary>
    public static string CutFigure(Length length) => UnitText.Of(CutMillimetres(length), () => InchText.ByRuleFigure(length.Millimeters));

    /// <summary>Length to which a piece is cut, its ends in fittings or free: in inches the thirty-second below, so that no socket is filled beyond its stop.</summary>
    public static string PieceLength(Length length) => UnitText.OfLength(length, $"{CutMillimetres(length)} mm", millimetres => InchText.ByRule(NoLonger(millimetres)));

    /// <summary>The same without the unit that heads its column.</summary>
    public static string PieceFigure(Length length) => UnitText.Of(CutMillimetres(length), () => InchText.ByRuleFigure(NoLonger(length.Millimeters)));

    /// <summary>Where a piece ends on its bar, from the squared end; without the unit that heads its column.</summary>
    public static string MarkFigure(CutMark mark, CutMark inInches) => UnitText.Of(CutMillimetres(mark.End), () => InchText.ByRuleFigure(inInches.End.Millimeters));

    /// <summary>What <see cref="PieceLength"/> leaves of a piece, in words; empty where nothing is told in inches.</summary>
    public static string PieceRule => PlanUnits.Current.Units == TextUnits.Metric ? ""
        : "In inches a piece is cut to the thirty-second below what is planned, and its mark lies at one: each comes out less than 1/32 in short and never long, so that every socket keeps its gap and every bar holds its pieces.";

    private static double NoLonger(double millimetres) => WholeLengths.DownToThirtySecond(UnitsNet.Length.FromMillimeters(millimetres)).Millimeters;

    private static string CutMillimetres(Length length) => UnitText.Number(Math.Round(length.Millimeters * 2, MidpointRounding.AwayFromZero) / 2, "0.#");
}
