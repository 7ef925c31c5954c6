using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>What stands at the foot of a side whatever stands over it, so that it is found at one place on every card.</summary>
internal sealed record AtFoot(Block Inner) : Block
{
    public override Fit Fit(double width, double height) => Inner.Fit(width, height);
}
