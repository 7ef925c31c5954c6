namespace StudioKit.Field.Analysis;

/// <summary>Colour of the background under clipping and over a mid-tone, where a white balance can still be judged.</summary>
/// <param name="RedStops">Red over green [1]; positive is reddish.</param>
/// <param name="BlueStops">Blue over green [1]; positive is bluish.</param>
public sealed record BackgroundTint(double RedStops, double BlueStops);
