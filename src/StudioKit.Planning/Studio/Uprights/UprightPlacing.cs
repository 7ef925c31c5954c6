using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Where points over the subject's foot lie before a sheet that may lean away from them.</summary>
internal static class UprightPlacing
{
    /// <summary>Square to the sheet, from a point over the subject's foot.</summary>
    /// <param name="upright">The sheet.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="height">Height of the point over the subject's foot, at which the sheet stands its distance behind.</param>
    public static Length Distance(UprightSpec upright, SetUpSpec setUp, Length height) => Level(upright, setUp, height) * Math.Cos(upright.Lean.Radians);

    /// <summary>From the lower edge, along the sheet, to the point square before it.</summary>
    /// <inheritdoc cref="Distance" path="/param"/>
    public static Length FromLowerEdge(UprightSpec upright, SetUpSpec setUp, Length height)
    {
        var (sin, cos) = Math.SinCos(upright.Lean.Radians);
        return (Ground(setUp) + height - (Level(upright, setUp, height) * cos * sin) - upright.OverGround) / cos;
    }

    /// <summary>From the lower edge, along the sheet, to the point level with a point over the subject's foot.</summary>
    /// <inheritdoc cref="Distance" path="/param"/>
    public static Length LevelWith(UprightSpec upright, SetUpSpec setUp, Length height) =>
        (Ground(setUp) + height - upright.OverGround) / Math.Cos(upright.Lean.Radians);

    /// <summary>Ground, or panel, to the subject's foot.</summary>
    public static Length Ground(SetUpSpec setUp) => setUp.IsBeforeUpright ? setUp.HeightOverGround : Length.Zero;

    private static Length Level(UprightSpec upright, SetUpSpec setUp, Length height) => setUp.BackgroundDistance + (height * Math.Tan(upright.Lean.Radians));
}
