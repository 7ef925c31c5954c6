using StudioKit.Physics.Exposure;

namespace StudioKit.Field.Advice;

/// <summary>The test frame that would tell more: darker, so that the background comes under clipping and can be read.</summary>
/// <param name="StopsLower">How much darker [1]; &gt; 0.</param>
/// <param name="Mark">Power to set; none where the power is not known, or the dial does not go so low: then ISO speed or f-number.</param>
/// <param name="ReadsTo">Margins of the frame as it is now that the darker one shows, from 0 to this many stops over clipping [1].</param>
public sealed record LowerFrame(double StopsLower, DialMark? Mark, double ReadsTo);
