using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.SetUps;

/// <summary>How well the inputs of one set-up are known.</summary>
/// <param name="Lights">For each of its lights, in the kit's order.</param>
/// <param name="Ambient">One standard deviation of the ambient light.</param>
internal sealed record KnownSetUp(ValueList<LightUncertainty> Lights, Stops Ambient)
{
    /// <summary>Uncertainties of one flash of the set-up and of what its light meets on the way.</summary>
    public LightUncertainty Of(SetUpSpec setUp, LightSpec light)
    {
        var place = 0;
        while (!ReferenceEquals(setUp.Lights[place], light))
        {
            place++;
        }

        return Lights[place];
    }
}
