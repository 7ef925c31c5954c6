using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Fittings of the kit's family, with the measures that a builder needs of them.</summary>
internal static class FittingCounts
{
    /// <summary>So many of a kind.</summary>
    public static FittingCount Of(KitSpec kit, FittingKind kind, int count)
    {
        var (name, spec) = Named(kit.Frame.Fittings, kind);
        return new FittingCount(kind, name, count, spec.TakeOff, spec.Mass, spec.Price)
        {
            ToPipeEnd = spec.TakeOff + kit.Frame.InsertionGap,
            ToMark = spec.TakeOff + spec.SocketDepth,
        };
    }

    private static (string Name, FittingSpec Spec) Named(FittingsSpec family, FittingKind kind) => kind switch
    {
        FittingKind.Elbow => ("elbow 90°", family.Elbow),
        FittingKind.Tee => ("tee", family.Tee),
        FittingKind.Cross => ("cross", family.Cross),
        FittingKind.Corner => ("three-way corner", family.Corner),
        FittingKind.Coupling => ("coupling", family.Coupling),
        _ => ("end cap", family.Cap),
    };
}
