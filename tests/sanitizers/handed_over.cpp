// What is handed to another thread through Qt, told to the thread sanitizer.
//
// Qt is built without the sanitizer, which therefore does not see the locks of its event
// queues and thread pools: each closure that goes through one looks like a race. The
// functions here stand before Qt's of the same name in programs built with the sanitizer.
// They say "whoever runs this closure comes after whoever handed it over", which is what
// Qt's locks do (Qt 6.4, "Thread-Support in Qt Modules": postEvent is thread-safe), and
// nothing else: what a closure shares without a lock is still seen.
#include <dlfcn.h>
#include <sanitizer/tsan_interface.h>

#include <QObject>
#include <QThreadPool>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>

namespace {

template <class Function>
Function libraryOwn(const char* name) {
  void* const found = dlsym(RTLD_NEXT, name);
  if (!found) {
    std::fprintf(stderr, "handed_over.cpp: there is no %s any more; its new form belongs here\n", name);
    std::abort();
  }
  return reinterpret_cast<Function>(found);
}

/// A closure on its way, with its mark for the sanitizer. Arguments as in Qt's own slot objects.
class HandedOver : public QtPrivate::QSlotObjectBase {
 public:
  explicit HandedOver(QtPrivate::QSlotObjectBase* slot) : QSlotObjectBase(&act), slot_(slot) { __tsan_release(this); }

 private:
  static void act(int which, QSlotObjectBase* object, QObject* receiver, void** arguments, bool*) {
    auto* const self = static_cast<HandedOver*>(object);
    __tsan_acquire(self);
    if (which == Call) {
      self->slot_->call(receiver, arguments);
      __tsan_release(self);  // before whoever lets go of it last, which Qt counts
    }
    if (which != Destroy) return;
    self->slot_->destroyIfLastRef();
    delete self;
  }

  QtPrivate::QSlotObjectBase* slot_;
};

}  // namespace

// The sanitizer's own (of LLVM 14) takes Qt's process starter for a fork and ends the program.
extern "C" int clone(int (*begin)(void*), void* stack, int flags, void* argument, ...) {
  static const auto own = libraryOwn<int (*)(int (*)(void*), void*, int, void*, ...)>("clone");
  va_list more;
  va_start(more, argument);
  void* const parent = va_arg(more, void*);
  void* const tls = va_arg(more, void*);
  void* const child = va_arg(more, void*);
  va_end(more);
  return own(begin, stack, flags, argument, parent, tls, child);
}

bool QMetaObject::invokeMethodImpl(QObject* object, QtPrivate::QSlotObjectBase* slot, Qt::ConnectionType type, void* result) {
  static const auto own = libraryOwn<decltype(&QMetaObject::invokeMethodImpl)>(
      "_ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv");
  return own(object, new HandedOver(slot), type, result);
}

void QThreadPool::start(std::function<void()> task, int priority) {
  using Start = void (*)(QThreadPool*, std::function<void()>, int);
  static const auto own = libraryOwn<Start>("_ZN11QThreadPool5startESt8functionIFvvEEi");
  auto* const handed = new std::function<void()>(std::move(task));
  __tsan_release(handed);
  own(this, [handed] {
    __tsan_acquire(handed);
    (*handed)();
    delete handed;
  }, priority);
}
