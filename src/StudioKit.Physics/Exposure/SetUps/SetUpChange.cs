namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>One change that makes an impossible set-up work.</summary>
/// <param name="Change">What to do and what is then set, e.g. <c>move the flash below to 25 cm: flash below 1/2</c>.</param>
/// <param name="Result">The set-up solved again with the change.</param>
public sealed record SetUpChange(string Change, SetUpResult Result);
