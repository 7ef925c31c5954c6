using MathNet.Numerics.LinearAlgebra;

namespace StudioKit.Field.Calibration;

/// <summary>A fit: the corrections, their covariance, how much each reading was believed and what is left of it.</summary>
internal sealed record CalibrationSolution(Vector<double> Mean, Matrix<double> Covariance, double[] Weights, Vector<double> Left);
