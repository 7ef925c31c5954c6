using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Advising;

/// <summary>What a test frame shows of an exposure's light, before anything is turned.</summary>
/// <param name="Gives">Light against what the plan expects, in every place.</param>
/// <param name="Present">Margin that the darkest visible place really has when all is set as the exposure says.</param>
/// <param name="IsSetOtherwise">Whether it lies further from the plan than any kit's figures are wrong, so that it was set otherwise, or is of another kit.</param>
public sealed record MeasuredLight(Stops Gives, Stops Present, bool IsSetOtherwise);
