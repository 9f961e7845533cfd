/*
 * SUNDIALS KINSOL with KLU, as a solver that Java gives its equations to.
 *
 * The Java side is dev.offtake.measure.Kinsol. Its arrays x, f and values are shared: before a
 * callback the point is copied into x, after it the residual or the Jacobian is copied out. The
 * Jacobian comes by rows, in the order of the pattern that create() was given.
 */
#include <jni.h>
#include <kinsol/kinsol.h>
#include <nvector/nvector_serial.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_sparse.h>

typedef struct {
  JNIEnv *env; /* of the solve that is going on */
  jobject system;
  jmethodID residual, jacobian, nothing;
  jdoubleArray x, f, values;
  jint n, places;
  sunindextype *start, *columns;
  SUNContext context;
  void *kinsol;
  N_Vector u, uscale, fscale;
  SUNMatrix matrix;
  SUNLinearSolver linear;
} Peer;

static Peer *peer_of(jlong handle) { return (Peer *)(intptr_t)handle; }

static int call(Peer *peer, jmethodID method, N_Vector at) {
  JNIEnv *env = peer->env;
  (*env)->SetDoubleArrayRegion(env, peer->x, 0, peer->n, N_VGetArrayPointer(at));
  (*env)->CallVoidMethod(env, peer->system, method);
  return (*env)->ExceptionCheck(env) ? -1 : 0;
}

static int residual(N_Vector at, N_Vector f, void *data) {
  Peer *peer = data;
  if (call(peer, peer->residual, at)) return -1;
  (*peer->env)->GetDoubleArrayRegion(peer->env, peer->f, 0, peer->n, N_VGetArrayPointer(f));
  return 0;
}

static int jacobian(
    N_Vector at, N_Vector f, SUNMatrix matrix, void *data, N_Vector t1, N_Vector t2) {
  Peer *peer = data;
  (void)f, (void)t1, (void)t2;
  if (call(peer, peer->jacobian, at)) return -1;
  /* KINSOL has cleared the pattern as well. */
  memcpy(SUNSparseMatrix_IndexPointers(matrix), peer->start,
         (peer->n + 1) * sizeof(sunindextype));
  memcpy(SUNSparseMatrix_IndexValues(matrix), peer->columns,
         peer->places * sizeof(sunindextype));
  (*peer->env)->GetDoubleArrayRegion(
      peer->env, peer->values, 0, peer->places, SUNSparseMatrix_Data(matrix));
  return 0;
}

static void be_quiet(
    int code, const char *module, const char *function, char *message, void *data) {
  (void)code, (void)module, (void)function, (void)message, (void)data;
}

static int keep_analysis(SUNLinearSolver linear) {
  (void)linear;
  return SUNLS_SUCCESS;
}

static sunindextype *indices(JNIEnv *env, jintArray given, jint *count) {
  *count = (*env)->GetArrayLength(env, given);
  jint *from = (*env)->GetIntArrayElements(env, given, NULL);
  sunindextype *copy = malloc(*count * sizeof *copy);
  for (jint i = 0; from && copy && i < *count; i++) copy[i] = from[i];
  if (from) (*env)->ReleaseIntArrayElements(env, given, from, JNI_ABORT);
  return copy;
}

JNIEXPORT jlong JNICALL Java_dev_offtake_measure_Kinsol_create(
    JNIEnv *env, jclass type, jobject system, jdoubleArray x, jdoubleArray f,
    jdoubleArray values, jintArray start, jintArray columns) {
  (void)type;
  Peer *p = calloc(1, sizeof *p);
  jclass of = (*env)->GetObjectClass(env, system);
  jint rows;
  if (!p) return 0;
  p->env = env;
  p->system = (*env)->NewGlobalRef(env, system);
  p->residual = (*env)->GetMethodID(env, of, "residual", "()V");
  p->jacobian = (*env)->GetMethodID(env, of, "jacobian", "()V");
  p->nothing = (*env)->GetMethodID(env, of, "nothing", "()V");
  p->x = (*env)->NewGlobalRef(env, x);
  p->f = (*env)->NewGlobalRef(env, f);
  p->values = (*env)->NewGlobalRef(env, values);
  p->start = indices(env, start, &rows);
  p->columns = indices(env, columns, &p->places);
  p->n = rows - 1;
  if (SUNContext_Create(NULL, &p->context)) return 0;
  p->u = N_VNew_Serial(p->n, p->context);
  p->uscale = N_VNew_Serial(p->n, p->context);
  p->fscale = N_VNew_Serial(p->n, p->context);
  p->matrix = SUNSparseMatrix(p->n, p->n, p->places, CSR_MAT, p->context);
  p->linear = SUNLinSol_KLU(p->u, p->matrix, p->context);
  p->kinsol = KINCreate(p->context);
  if (!p->kinsol || !p->linear || KINInit(p->kinsol, residual, p->u)
      || KINSetUserData(p->kinsol, p)
      || KINSetErrHandlerFn(p->kinsol, be_quiet, NULL)
      || KINSetLinearSolver(p->kinsol, p->linear, p->matrix)
      || KINSetJacFn(p->kinsol, jacobian)
      || KINSetNumMaxIters(p->kinsol, 40)
      /* A fresh Jacobian at each step. With one kept for ten, a state of the sweep never ends. */
      || KINSetMaxSetupCalls(p->kinsol, 1)
      /* One unit of the scaled residual is what a balance may leave over. */
      || KINSetFuncNormTol(p->kinsol, 1.0)
      || KINSetScaledStepTol(p->kinsol, 1e-30)) {
    return 0;
  }
  return (jlong)(intptr_t)p;
}

/* Lets the analysis of the pattern outlive a solve, which KINSOL does not by itself. */
JNIEXPORT void JNICALL Java_dev_offtake_measure_Kinsol_keepAnalysis(
    JNIEnv *env, jclass type, jlong handle) {
  (void)env, (void)type;
  peer_of(handle)->linear->ops->initialize = keep_analysis;
}

JNIEXPORT jint JNICALL Java_dev_offtake_measure_Kinsol_solve(
    JNIEnv *env, jclass type, jlong handle, jdoubleArray start, jdoubleArray uscale,
    jdoubleArray fscale, jboolean line_search) {
  (void)type;
  Peer *p = peer_of(handle);
  p->env = env;
  (*env)->GetDoubleArrayRegion(env, start, 0, p->n, N_VGetArrayPointer(p->u));
  (*env)->GetDoubleArrayRegion(env, uscale, 0, p->n, N_VGetArrayPointer(p->uscale));
  (*env)->GetDoubleArrayRegion(env, fscale, 0, p->n, N_VGetArrayPointer(p->fscale));
  int result =
      KINSol(p->kinsol, p->u, line_search ? KIN_LINESEARCH : KIN_NONE, p->uscale, p->fscale);
  (*env)->SetDoubleArrayRegion(env, start, 0, p->n, N_VGetArrayPointer(p->u));
  return result;
}

/* Newton steps, evaluations of the residual and of the Jacobian of the last solve. */
JNIEXPORT void JNICALL Java_dev_offtake_measure_Kinsol_counts(
    JNIEnv *env, jclass type, jlong handle, jlongArray counts) {
  (void)type;
  Peer *p = peer_of(handle);
  long got[3] = {0, 0, 0};
  jlong told[3];
  KINGetNumNonlinSolvIters(p->kinsol, &got[0]);
  KINGetNumFuncEvals(p->kinsol, &got[1]);
  KINGetNumJacEvals(p->kinsol, &got[2]);
  for (int i = 0; i < 3; i++) told[i] = got[i];
  (*env)->SetLongArrayRegion(env, counts, 0, 3, told);
}

/* Calls back as for a residual, but Java does nothing: what the way there and back costs. */
JNIEXPORT void JNICALL Java_dev_offtake_measure_Kinsol_callBack(
    JNIEnv *env, jclass type, jlong handle, jint times) {
  (void)type;
  Peer *p = peer_of(handle);
  p->env = env;
  for (jint i = 0; i < times; i++) {
    if (call(p, p->nothing, p->u)) return;
    (*env)->GetDoubleArrayRegion(env, p->f, 0, p->n, N_VGetArrayPointer(p->fscale));
  }
}
