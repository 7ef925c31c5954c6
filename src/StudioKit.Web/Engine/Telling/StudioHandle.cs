using StudioKit.Planning.Changes;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Something of the studio that can be moved, and the change of the kit that moving it is.</summary>
/// <param name="Told">What the page is told of it.</param>
/// <param name="To">The change that sets it to a value in its unit.</param>
internal sealed record StudioHandle(Handle Told, Func<double, KitChange> To)
{
    /// <summary>The change that a move is, held within its bounds.</summary>
    public KitChange Moved(double value) => To(Math.Clamp(value, Told.Least, Told.Most));
}
